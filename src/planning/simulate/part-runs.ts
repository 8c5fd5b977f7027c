import type { Season, SeasonStart } from '../season.ts'
import { emptyRoom } from './kept-draws.ts'
import type { SeasonLoads } from './loads.ts'
import { luckOf } from './luck.ts'
import type { Part } from './parts.ts'
import {
  nothingKept,
  type SimulatedSeasons,
  type SimulationInput,
  type SimulationKept,
  simulateLoads,
  simulateSeasons,
} from './simulate-seasons.ts'

/** Seasons to be run of one part of a season. */
export interface PartRun {
  /** As `partsOf` counts them. */
  readonly part: number
  readonly starts: readonly SeasonStart[]
  readonly input: SimulationInput
}

export interface PartRunner {
  run(run: PartRun): Promise<SimulatedSeasons>
  loads(run: PartRun): Promise<SeasonLoads>
  /** Takes a hand in what no thread has begun. */
  help(): void
}

export type OpenRunner = (season: Season, parts: readonly Part[]) => PartRunner

/** Runs each part at once, in this thread. */
export const runHere: OpenRunner = (_, parts) => {
  const { run, loads } = partRuns(parts)
  return { run: async of => run(of), loads: async of => loads(of), help() {} }
}

export interface PartRuns {
  run(run: PartRun): SimulatedSeasons
  loads(run: PartRun): SeasonLoads
}

/** Runs of the parts of a season in one thread, which keeps what it knows of each for the next run. */
export function partRuns(parts: readonly Part[]): PartRuns {
  let luck = luckOf(0)
  let kept: SimulationKept[] = []
  const keptOf = ({ part, input }: PartRun) => {
    if (luck.seed !== input.seed || kept.length === 0) {
      luck = luckOf(input.seed)
      const room = emptyRoom()
      kept = parts.map(() => nothingKept(input.seed, luck, room))
    }
    return kept[part]!
  }
  return {
    run: run => simulateSeasons(parts[run.part]!.season, run.starts, run.input, keptOf(run)),
    loads: run => simulateLoads(parts[run.part]!.season, run.starts, run.input, keptOf(run)),
  }
}
