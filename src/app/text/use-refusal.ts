import { type Refusal, wordsOf } from '../../api/index.ts'
import { phrase } from '../../trade/index.ts'
import { useTell } from './use-tell.ts'

/** A refusal of the server as it is shown. */
export interface RefusalSaid {
  readonly what: string
  readonly where: string
  readonly mend: string
  /** What stands in English alone: that of a library or of the disk. */
  readonly detail: string | null
  /** Whether all of it does: its code is not known here. */
  readonly isEnglish: boolean
}

/** Says a refusal in the language spoken, by its code; one that is not known here as the server said it. */
export function useRefusal(): (refusal: Refusal) => RefusalSaid {
  const tell = useTell()
  return ({ code, of, detail = null, ...english }) => {
    const words = wordsOf(code)
    if (words === null) return { ...english, detail: null, isEnglish: true }
    const say = (said: string) => tell(phrase(said, of))
    return { what: say(words.what), where: say(words.where), mend: say(words.mend), detail, isEnglish: false }
  }
}
