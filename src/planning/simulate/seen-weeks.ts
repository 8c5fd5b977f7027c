import type { SeasonOrder } from '../season.ts'

type Dates = Pick<SeasonOrder, 'earliestWeek' | 'dueWeek' | 'latestWeek'>

/** 1 for each week in which someone may take something: orders from their earliest to their latest week, grafts in theirs. */
export function takingWeeks(
  weeks: number,
  orders: readonly Dates[],
  useWeeks: readonly number[],
): Uint8Array {
  const isTaking = new Uint8Array(weeks)
  for (const { earliestWeek, dueWeek, latestWeek } of orders) {
    const due = Math.max(0, dueWeek)
    isTaking.fill(1, Math.max(0, Math.min(earliestWeek, due)), Math.max(due, latestWeek) + 1)
  }
  for (const week of useWeeks) if (week < weeks) isTaking[week] = 1
  return isTaking
}

/**
 * 1 for each week by which it is seen how many plants are ready: whether one is ready in that week, or before it and after the
 * last such week, makes no difference to anyone. What is ready so long before that it is past use after a week, or after the
 * week before it, is told apart as well.
 */
export function seenWeeks(isTaking: Uint8Array, usableWeeks: number): Uint8Array {
  const isSeen = Uint8Array.from(isTaking)
  isTaking.forEach((is, week) => {
    if (is === 1) isSeen.fill(1, Math.max(0, week - usableWeeks - 1), Math.max(0, week - usableWeeks + 1))
  })
  return isSeen
}

/** By week, and for the one after the last: that week if it is one of them, or the next that is; how many weeks there are if none is. */
export function nextOf(isOne: Uint8Array): Int32Array {
  const next = new Int32Array(isOne.length + 1).fill(isOne.length)
  for (let week = isOne.length - 1; week >= 0; week--) next[week] = isOne[week] === 1 ? week : next[week + 1]!
  return next
}
