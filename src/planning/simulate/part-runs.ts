import type { Season, SeasonStart } from '../season.ts'
import type { SeasonLoads } from './loads.ts'
import { type Luck, luckOf } from './luck.ts'
import type { Part } from './parts.ts'
import { emptyRoom, type Room } from './room-to-keep.ts'
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
export const runHere: OpenRunner = (season, parts) => runHereWith(noneKept())(season, parts)

export const runHereWith =
  (kept: KeptParts): OpenRunner =>
  (_, parts) => {
    const { run, loads } = partRuns(parts, kept)
    return { run: async of => run(of), loads: async of => loads(of), help() {} }
  }

/** What a thread knows of the parts of the last seasons: orders may change, all else that a part rests on must be the same. */
export interface KeptParts {
  luck: Luck
  room: Room
  readonly parts: Map<string, { readonly rests: string; readonly kept: SimulationKept }>
}

export const noneKept = (): KeptParts => ({ luck: luckOf(0), room: emptyRoom(), parts: new Map() })

export interface PartRuns {
  run(run: PartRun): SimulatedSeasons
  loads(run: PartRun): SeasonLoads
}

/** Runs of the parts of a season in one thread, which keeps what it knows of each for the next run. */
export function partRuns(parts: readonly Part[], all: KeptParts = noneKept()): PartRuns {
  const keptOf = ({ part, input }: PartRun): SimulationKept => {
    const { name, rests } = parts[part]!
    const known = all.parts.get(name)
    if (all.luck.seed === input.seed && known?.rests === rests) return known.kept
    if (all.luck.seed !== input.seed) all.luck = luckOf(input.seed)
    if (known) {
      all.parts.clear()
      all.room = emptyRoom()
    }
    const kept = nothingKept(input.seed, all.luck, all.room)
    all.parts.set(name, { rests, kept })
    return kept
  }
  return {
    run: run => simulateSeasons(parts[run.part]!.season, run.starts, run.input, keptOf(run)),
    loads: run => simulateLoads(parts[run.part]!.season, run.starts, run.input, keptOf(run)),
  }
}
