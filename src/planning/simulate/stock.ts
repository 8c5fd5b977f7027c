import type { StockLine } from './runs.ts'
import type { Workable } from './workable.ts'

export const READY = 1
export const PAST_USE = 2

/** Finished plants of one season, by line of stock and week in which they became ready. */
export interface Stock {
  /** Plants on hand, by line. */
  readonly onHand: Int32Array
  clear(): void
  /** Plants that become ready in a week, past or to come. */
  put(line: number, week: number, number: number): void
  /**
   * By weeks since the first that there is: `READY` where something becomes ready in the week, `PAST_USE` where something is
   * past use after it, both or 0.
   */
  readonly marks: Uint8Array
  /** Plants of a line that became ready this week. */
  readyIn(line: number): number
  /**
   * What is ready by this week is on hand. Weeks are opened in their order; those in which nobody takes anything may be left
   * out, and what is past use by then is gone.
   */
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
  const width = weeks + weeksBack
  const usable = Int32Array.from(lines, line => Math.min(line.usableWeeks, width))
  // Cell of a line and the week in which plants became ready: line · width + week + weeksBack.
  const left = new Int32Array(count * width)
  /** All that ever became ready, and the place in the row of stems above which all are taken or too thick. */
  const begun = new Int32Array(count * width)
  const takenAbove = new Float64Array(count * width)
  const oldest = new Int32Array(count)
  /** Between these something becomes ready. */
  const first = new Int32Array(count)
  const last = new Int32Array(count)
  const onHand = new Int32Array(count)
  let now = -1
  /** Weeks of thickening since this week: the caliper of what was ready before is that of today. */
  const grown = new Int32Array(width)
  for (let week = 1; week < weeks; week++)
    grown[week + weeksBack] = grown[week + weeksBack - 1]! + (growing?.[week] ?? 1)

  const marks = new Uint8Array(width)

  const firstCell = (line: number) =>
    line * width + Math.max(oldest[line]!, first[line]!, now + weeksBack - usable[line]!)

  return {
    onHand,
    marks,
    clear() {
      for (let line = 0, row = 0; line < count; line++, row += width) {
        if (last[line]! < 0) continue
        left.fill(0, row + first[line]!, row + last[line]! + 1)
        begun.fill(0, row + first[line]!, row + last[line]! + 1)
      }
      marks.fill(0)
      oldest.fill(0)
      first.fill(width)
      last.fill(-1)
      onHand.fill(0)
      now = -1
    },
    put(line, week, number) {
      const back = week + weeksBack
      const cell = line * width + back
      marks[back]! |= READY
      if (back + usable[line]! < width) marks[back + usable[line]!]! |= PAST_USE
      if (begun[cell] === 0) takenAbove[cell] = 1
      left[cell]! += number
      begun[cell]! += number
      if (back < first[line]!) first[line] = back
      if (back > last[line]!) last[line] = back
      if (week <= now) onHand[line]! += number
    },
    readyIn: line => begun[line * width + now + weeksBack]!,
    open(week) {
      const from = now + 1 + weeksBack
      const to = week + weeksBack
      now = week
      for (let line = 0, row = 0; line < count; line++, row += width) {
        const end = Math.min(to, last[line]!)
        for (let back = Math.max(from, first[line]!); back <= end; back++) onHand[line]! += left[row + back]!
        const pastUse = Math.min(to - usable[line]!, last[line]! + 1)
        for (let back = Math.max(first[line]!, from - usable[line]!); back < pastUse; back++) {
          onHand[line]! -= left[row + back]!
          left[row + back] = 0
        }
      }
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
