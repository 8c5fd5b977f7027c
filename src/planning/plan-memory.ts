import type { SimulationMemory } from './simulate/simulate-by-component.ts'

/**
 * What a plan leaves behind for the next in the same process: the seasons simulated of each part of the nursery, so that
 * only parts that have changed are simulated again. It makes the next plan quicker and never another.
 */
export interface PlanMemory {
  readonly simulated: SimulationMemory
}

export const planMemory = (): PlanMemory => ({ simulated: new Map() })
