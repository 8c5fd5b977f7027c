import type { Season } from '../season.ts'
import type { SeasonLoads } from './loads.ts'
import {
  type KeptParts,
  noneKept,
  type OpenRunner,
  type PartRun,
  type PartRunner,
  type PartRuns,
  partRuns,
} from './part-runs.ts'
import { partsOf } from './parts.ts'
import type { SimulatedSeasons } from './simulate-seasons.ts'

/** One end of a line between two threads. */
export interface Line {
  postMessage(message: unknown, transfer?: readonly ArrayBuffer[]): void
  on(event: 'message', heard: (message: unknown) => void): unknown
  off(event: 'message', heard: (message: unknown) => void): unknown
}

/** What a thread is told: a season once, then runs of its parts. Whoever claims a run first, runs it. */
type Told =
  | { readonly season: Season; readonly number: number }
  | (Asked & { readonly number: number; readonly at: number; readonly claims: Int32Array })

interface Asked {
  readonly run: PartRun
  readonly what: 'run' | 'loads'
}

interface Answer {
  readonly number: number
  readonly at: number
  readonly answer: SimulatedSeasons | SeasonLoads
}

/** Runs of one season that threads may claim; later ones are run where they are asked for. */
const MOST_CLAIMS = 1 << 16
/** With fewer orders a season is run sooner than it is told. */
const FEW_ORDERS = 100

let numbers = 0

/**
 * Shares the parts of a season out to other threads. A run depends on the season, the starts and the seed alone, so the answer
 * is the same whoever gives it, and whatever their number.
 */
export const runsSharedWith =
  (lines: () => readonly Line[], kept: KeptParts = noneKept()): OpenRunner =>
  (season, parts) =>
    shared(season, partRuns(parts, kept), season.orders.length < FEW_ORDERS ? [] : lines())

function shared(season: Season, here: PartRuns, lines: readonly Line[]): PartRunner {
  const number = ++numbers
  const claims = new Int32Array(new SharedArrayBuffer(4 * MOST_CLAIMS))
  const waiting = new Map<number, Asked & { readonly hear: (answer: Answer['answer']) => void }>()
  let asks = 0
  let isSeasonTold = false
  let isListening = false
  const heard = (message: unknown) => {
    const { number: of, at, answer } = message as Answer
    if (of === number) done(at, answer)
  }
  const done = (at: number, answer: Answer['answer']) => {
    waiting.get(at)?.hear(answer)
    waiting.delete(at)
    if (waiting.size > 0 || !isListening) return
    isListening = false
    for (const line of lines) line.off('message', heard)
  }
  const tell = (told: Told) => {
    for (const line of lines) line.postMessage(told)
  }
  const tellRun = (at: number, { run, what }: Asked) => tell({ run, what, number, at, claims })

  const ask = (asked: Asked): Promise<Answer['answer']> => {
    const at = asks++
    if (lines.length === 0 || at >= MOST_CLAIMS) return Promise.resolve(here[asked.what](asked.run))
    const answered = new Promise<Answer['answer']>(hear => waiting.set(at, { ...asked, hear }))
    if (!isListening) for (const line of lines) line.on('message', heard)
    isListening = true
    if (isSeasonTold) tellRun(at, asked)
    else if (waiting.size > 1) {
      // One run alone is done sooner than a season is told.
      isSeasonTold = true
      tell({ season, number })
      for (const [before, each] of waiting) tellRun(before, each)
    }
    return answered
  }

  return {
    run: run => ask({ run, what: 'run' }) as Promise<SimulatedSeasons>,
    loads: run => ask({ run, what: 'loads' }) as Promise<SeasonLoads>,
    help() {
      // The threads take the first; from the other end nobody waits for another.
      for (const [at, { run, what }] of [...waiting].reverse()) {
        if (claim(claims, at)) done(at, here[what](run))
      }
    },
  }
}

const claim = (claims: Int32Array, at: number) => Atomics.compareExchange(claims, at, 0, 1) === 0

/** The other end: runs what nobody has claimed. */
export function takeRuns(line: Line): void {
  let number = 0
  const kept = noneKept()
  let runs = partRuns([], kept)
  line.on('message', message => {
    const told = message as Told
    if ('season' in told) {
      number = told.number
      runs = partRuns(partsOf(told.season), kept)
      return
    }
    if (told.number !== number || !claim(told.claims, told.at)) return
    const answer = runs[told.what](told.run)
    const arrays = Object.values(answer).filter(value => ArrayBuffer.isView(value))
    line.postMessage({ number, at: told.at, answer } satisfies Answer, arrays.map(bufferOf))
  })
}

const bufferOf = ({ buffer }: { readonly buffer: ArrayBufferLike }) => buffer as ArrayBuffer
