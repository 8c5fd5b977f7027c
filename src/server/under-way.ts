import type { LongJob } from '../api/index.ts'
import type { HowFar } from '../planning/index.ts'
import type { Phrase } from '../trade/index.ts'

export interface Told {
  readonly of: LongJob
  readonly share: number
  readonly says: Phrase
}

/** How far long answers have come: told by those who work them out, heard by all pages. */
export interface UnderWay {
  tell(of: LongJob): HowFar
  onTold(heard: (told: Told) => void): () => void
}

export const createUnderWay = (): UnderWay => {
  const listeners = new Set<(told: Told) => void>()
  return {
    tell: of => (share, says) => {
      for (const heard of listeners) heard({ of, share, says })
    },
    onTold: heard => {
      listeners.add(heard)
      return () => void listeners.delete(heard)
    },
  }
}
