import type { StockLine } from './runs.ts'
import type { Workable } from './workable.ts'

/** No cell. */
const NONE = -1

/** Finished plants of one season, by line of stock and week in which they became ready. */
export interface Stock {
  /** Plants on hand, by line. */
  readonly onHand: Int32Array
  clear(): void
  /** Plants that become ready in a week, past or to come. */
  put(line: number, week: number, number: number): void
  /** Nothing becomes ready in this week, and nothing is past use after it. */
  isQuiet(week: number): boolean
  /** Plants of a line that became ready this week. */
  readyIn(line: number): number
  /** What becomes ready this week is on hand. Weeks are opened in their order; quiet ones may be left out. */
  open(week: number): void
  /** Takes plants of this week's stock, the oldest first; returns how many there were. */
  takeOldest(line: number, wanted: number): number
  /** Takes rootstocks whose stems can be worked, the thickest of the oldest first: they are outgrown soonest. */
  takeStems(line: number, workable: Workable | null, wanted: number): number
  /** Lines that had plants ready so long ago that they may not be kept beyond this week, in their order. */
  eachLast(then: (line: number) => void): void
  /** Plants of a line that may not be kept beyond this week. */
  lastChance(line: number): number
  /** Throws out what is past use at the end of this week; returns how many. */
  outgrow(line: number): number
}

export function emptyStock(
  lines: readonly StockLine[],
  weeks: number,
  weeksBack: number,
  growing?: Uint8Array,
): Stock {
  const count = lines.length
  const width = weeks + weeksBack
  const usable = Int32Array.from(lines, line => Math.min(line.usableWeeks, width))
  // Cell of a line and the week in which plants became ready: line · width + week + weeksBack.
  const left = new Int32Array(count * width)
  /** All that ever became ready, and the place in the row of stems above which all are taken or too thick. */
  const begun = new Int32Array(count * width)
  const takenAbove = new Float64Array(count * width).fill(1)
  const oldest = new Int32Array(count)
  const onHand = new Int32Array(count)
  let now = -1
  /** Weeks of thickening since this week: the caliper of what was ready before is that of today. */
  const grown = new Int32Array(width)
  for (let week = 1; week < weeks; week++)
    grown[week + weeksBack] = grown[week + weeksBack - 1]! + (growing?.[week] ?? 1)

  /** Cells begun in this season; those of each week, and those past use after each week, as chains in order of line. */
  const cells = new Int32Array(count * width)
  let begunCells = 0
  const readyIn = new Int32Array(width).fill(NONE)
  const nextReady = new Int32Array(count * width)
  const lastIn = new Int32Array(width).fill(NONE)
  const nextLast = new Int32Array(count * width)
  const chain = (first: Int32Array, next: Int32Array, at: number, cell: number) => {
    let before = NONE
    let after = first[at]!
    while (after !== NONE && after < cell) {
      before = after
      after = next[after]!
    }
    next[cell] = after
    if (before === NONE) first[at] = cell
    else next[before] = cell
  }
  const begin = (line: number, back: number, cell: number) => {
    cells[begunCells++] = cell
    chain(readyIn, nextReady, back, cell)
    const last = back + usable[line]!
    if (last < width) chain(lastIn, nextLast, last, cell)
  }

  const firstCell = (line: number) => line * width + Math.max(oldest[line]!, now + weeksBack - usable[line]!)

  return {
    onHand,
    clear() {
      for (let i = 0; i < begunCells; i++) {
        const cell = cells[i]!
        left[cell] = 0
        begun[cell] = 0
        takenAbove[cell] = 1
      }
      begunCells = 0
      readyIn.fill(NONE)
      lastIn.fill(NONE)
      oldest.fill(0)
      onHand.fill(0)
      now = -1
    },
    put(line, week, number) {
      const back = week + weeksBack
      const cell = line * width + back
      if (begun[cell] === 0 && number > 0) begin(line, back, cell)
      left[cell]! += number
      begun[cell]! += number
      if (week <= now) onHand[line]! += number
    },
    isQuiet: week => readyIn[week + weeksBack] === NONE && lastIn[week + weeksBack] === NONE,
    readyIn: line => begun[line * width + now + weeksBack]!,
    open(week) {
      now = week
      for (let cell = readyIn[week + weeksBack]!; cell !== NONE; cell = nextReady[cell]!)
        onHand[Math.floor(cell / width)]! += left[cell]!
    },
    takeOldest(line, wanted) {
      let rest = Math.min(wanted, onHand[line]!)
      const got = rest
      onHand[line]! -= got
      let cell = firstCell(line)
      for (; rest > 0; cell++) {
        const take = Math.min(left[cell]!, rest)
        left[cell]! -= take
        rest -= take
        if (left[cell]! > 0) break
      }
      oldest[line] = Math.min(cell - line * width, now + weeksBack)
      return got
    },
    takeStems(line, workable, wanted) {
      if (!workable) return this.takeOldest(line, wanted)
      if (onHand[line] === 0) return 0
      let got = 0
      const today = line * width + now + weeksBack
      for (let cell = firstCell(line); cell <= today && got < wanted; cell++) {
        if (left[cell] === 0) continue
        const age = grown[now + weeksBack]! - grown[cell - line * width]!
        const thickest = Math.min(workable.thickest[age]!, takenAbove[cell]!)
        const fit = Math.round(begun[cell]! * (thickest - workable.thinnest[age]!))
        const take = Math.min(left[cell]!, Math.max(0, fit), wanted - got)
        if (take === 0) continue
        takenAbove[cell] = thickest - take / begun[cell]!
        left[cell]! -= take
        got += take
      }
      onHand[line]! -= got
      return got
    },
    eachLast(then) {
      for (let cell = lastIn[now + weeksBack]!; cell !== NONE; cell = nextLast[cell]!)
        then(Math.floor(cell / width))
    },
    lastChance(line) {
      const back = now + weeksBack - usable[line]!
      return back < 0 ? 0 : left[line * width + back]!
    },
    outgrow(line) {
      const back = now + weeksBack - usable[line]!
      if (back < 0) return 0
      const cell = line * width + back
      const gone = left[cell]!
      left[cell] = 0
      onHand[line]! -= gone
      return gone
    },
  }
}
