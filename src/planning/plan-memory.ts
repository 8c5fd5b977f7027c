import { type KeptParts, noneKept } from './simulate/part-runs.ts'
import type { SimulationMemory } from './simulate/simulate-by-component.ts'
import type { ReckoningMemory } from './whole/reckon.ts'

/**
 * What a plan leaves behind for the next in the same process: the seasons simulated of each part of the nursery, so that
 * only parts that have changed are simulated again, and where its solves ended. It makes the next plan quicker and never
 * another.
 */
export interface PlanMemory {
  readonly simulated: SimulationMemory
  readonly parts: KeptParts
  readonly reckoned: ReckoningMemory
}

export const planMemory = (): PlanMemory => ({ simulated: new Map(), parts: noneKept(), reckoned: {} })
