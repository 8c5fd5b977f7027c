import type { StockLine } from './runs.ts'
import type { Workable } from './workable.ts'

/** Finished plants of one season, by line of stock and week in which they became ready. */
export interface Stock {
  /** Plants on hand, by line. */
  readonly onHand: Int32Array
  clear(): void
  /** Plants that become ready in a week, past or to come. */
  put(line: number, week: number, number: number): void
  /** Plants of a line that became ready this week. */
  readyIn(line: number): number
  /** What becomes ready this week is on hand. Weeks must be opened one after the other. */
  open(week: number): void
  /** Takes plants of this week's stock, the oldest first; returns how many there were. */
  takeOldest(line: number, wanted: number): number
  /** Takes rootstocks whose stems can be worked, the thickest of the oldest first: they are outgrown soonest. */
  takeStems(line: number, workable: Workable | null, wanted: number): number
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
  const usable = Int32Array.from(lines, line => Math.min(line.usableWeeks, weeks + weeksBack))
  const cells = (weeks + weeksBack) * count
  const left = new Int32Array(cells)
  /** All that ever became ready, and the place in the row of stems above which all are taken or too thick. */
  const begun = new Int32Array(cells)
  const takenAbove = new Float64Array(cells).fill(1)
  const oldest = new Int32Array(count)
  /** Whether anything at all becomes ready in a week. */
  const isAnyReady = new Uint8Array(weeks + weeksBack)
  const onHand = new Int32Array(count)
  let now = -1
  /** Weeks of thickening since this week: the caliper of what was ready before is that of today. */
  const grown = new Int32Array(weeks + weeksBack)
  for (let week = 1; week < weeks; week++)
    grown[week + weeksBack] = grown[week + weeksBack - 1]! + (growing?.[week] ?? 1)

  const firstCell = (line: number) => Math.max(oldest[line]!, now + weeksBack - usable[line]!)

  return {
    onHand,
    clear() {
      left.fill(0)
      begun.fill(0)
      takenAbove.fill(1)
      isAnyReady.fill(0)
      oldest.fill(0)
      onHand.fill(0)
      now = -1
    },
    put(line, week, number) {
      const cell = (week + weeksBack) * count + line
      isAnyReady[week + weeksBack] = 1
      left[cell]! += number
      begun[cell]! += number
      if (week <= now) onHand[line]! += number
    },
    readyIn: line => begun[(now + weeksBack) * count + line]!,
    open(week) {
      now = week
      if (isAnyReady[week + weeksBack] === 0) return
      const from = (week + weeksBack) * count
      for (let line = 0; line < count; line++) onHand[line]! += left[from + line]!
    },
    takeOldest(line, wanted) {
      let rest = Math.min(wanted, onHand[line]!)
      const got = rest
      onHand[line]! -= got
      let back = firstCell(line)
      for (; rest > 0; back++) {
        const cell = back * count + line
        const take = Math.min(left[cell]!, rest)
        left[cell]! -= take
        rest -= take
        if (left[cell]! > 0) break
      }
      oldest[line] = Math.min(back, now + weeksBack)
      return got
    },
    takeStems(line, workable, wanted) {
      if (!workable) return this.takeOldest(line, wanted)
      if (onHand[line] === 0) return 0
      let got = 0
      for (let back = firstCell(line); back <= now + weeksBack && got < wanted; back++) {
        const cell = back * count + line
        if (left[cell] === 0) continue
        const age = grown[now + weeksBack]! - grown[back]!
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
    lastChance(line) {
      const back = now + weeksBack - usable[line]!
      return back < 0 ? 0 : left[back * count + line]!
    },
    outgrow(line) {
      const back = now + weeksBack - usable[line]!
      if (back < 0) return 0
      const cell = back * count + line
      const gone = left[cell]!
      left[cell] = 0
      onHand[line]! -= gone
      return gone
    },
  }
}
