import type { Figure } from '../figure.ts'
import type { StepId } from '../ids.ts'
import type { Preparation, Step, Taking } from '../protocol.ts'
import type { Material } from '../vocabulary.ts'

/** What a family of methods says of its own; name, window, cautions and settings are added alike for all. */
export interface Draft {
  readonly before: readonly Preparation[]
  readonly takes: readonly Taking[]
  readonly steps: readonly Step[]
  /** Starts come in multiples of this many. Common practice; a nursery sets its own. */
  readonly tray: number
  readonly smallestBatch: number
  readonly note?: string
}

export const takeMaterial = (
  material: Material,
  part: Extract<Taking, { what: 'material' }>['part'],
  perPlant: number,
  keepsDays: Figure,
  atStep?: StepId,
): Taking => ({
  what: 'material',
  material,
  part,
  perPlant,
  keepsDays,
  ...(atStep === undefined ? {} : { atStep }),
})
