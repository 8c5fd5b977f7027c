import type { Season, SeasonStart } from '../season.ts'
import type { Part } from './parts.ts'
import { type SimulatedSeasons, type SimulationInput, simulateSeasons } from './simulate-seasons.ts'

/** Seasons to be run of one part of a season. */
export interface PartRun {
  /** As `partsOf` counts them. */
  readonly part: number
  readonly starts: readonly SeasonStart[]
  readonly input: SimulationInput
}

export interface PartRunner {
  run(run: PartRun): Promise<SimulatedSeasons>
  /** Takes a hand in what no thread has begun. */
  help(): void
}

export type OpenRunner = (season: Season, parts: readonly Part[]) => PartRunner

/** Runs each part at once, in this thread. */
export const runHere: OpenRunner = (_, parts) => ({
  run: async run => seasonsOfPart(parts, run),
  help() {},
})

export const seasonsOfPart = (parts: readonly Part[], { part, starts, input }: PartRun): SimulatedSeasons =>
  simulateSeasons(parts[part]!.season, starts, input)
