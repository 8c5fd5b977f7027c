import type { Season } from '../season.ts'
import { type OpenRunner, type PartRun, type PartRunner, seasonsOfPart } from './part-runs.ts'
import { type Part, partsOf } from './parts.ts'
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
  | { readonly run: PartRun; readonly number: number; readonly at: number; readonly claims: Int32Array }

interface Answer {
  readonly number: number
  readonly at: number
  readonly simulated: SimulatedSeasons
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
  (lines: () => readonly Line[]): OpenRunner =>
  (season, parts) =>
    shared(season, parts, season.orders.length < FEW_ORDERS ? [] : lines())

function shared(season: Season, parts: readonly Part[], lines: readonly Line[]): PartRunner {
  const number = ++numbers
  const claims = new Int32Array(new SharedArrayBuffer(4 * MOST_CLAIMS))
  const waiting = new Map<
    number,
    { readonly run: PartRun; readonly answer: (of: SimulatedSeasons) => void }
  >()
  let asked = 0
  const heard = (message: unknown) => {
    const { number: of, at, simulated } = message as Answer
    if (of !== number) return
    waiting.get(at)?.answer(simulated)
    waiting.delete(at)
    if (waiting.size === 0) for (const line of lines) line.off('message', heard)
  }
  for (const line of lines) line.postMessage({ season, number } satisfies Told)

  return {
    run(run) {
      const at = asked++
      if (lines.length === 0 || at >= MOST_CLAIMS) return Promise.resolve(seasonsOfPart(parts, run))
      if (waiting.size === 0) for (const line of lines) line.on('message', heard)
      const answered = new Promise<SimulatedSeasons>(answer => waiting.set(at, { run, answer }))
      for (const line of lines) line.postMessage({ run, number, at, claims } satisfies Told)
      return answered
    },
    help() {
      // The threads take the first; from the other end nobody waits for another.
      for (const [at, { run, answer }] of [...waiting].reverse()) {
        if (!claim(claims, at)) continue
        answer(seasonsOfPart(parts, run))
        waiting.delete(at)
      }
    },
  }
}

const claim = (claims: Int32Array, at: number) => Atomics.compareExchange(claims, at, 0, 1) === 0

/** The other end: runs what nobody has claimed. */
export function takeRuns(line: Line): void {
  let number = 0
  let parts: readonly Part[] = []
  line.on('message', message => {
    const told = message as Told
    if ('season' in told) {
      number = told.number
      parts = partsOf(told.season)
      return
    }
    if (told.number !== number || !claim(told.claims, told.at)) return
    const simulated = seasonsOfPart(parts, told.run)
    const { byDue, weeksLate, late, delivered, squareMetres, minutes, promisable } = simulated
    const arrays = [byDue, weeksLate, late, delivered, squareMetres, minutes, promisable]
    line.postMessage({ number, at: told.at, simulated } satisfies Answer, arrays.map(bufferOf))
  })
}

const bufferOf = ({ buffer }: { readonly buffer: ArrayBufferLike }) => buffer as ArrayBuffer
