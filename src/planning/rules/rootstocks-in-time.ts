import { normalCdf } from '../../science/index.ts'
import { grouped } from '../grouped.ts'
import type { RootstockUseColumn } from '../model/season-model.ts'
import type { Course } from '../season.ts'
import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'

/** Weeks after a rootstock is ready beyond which we no longer follow how it thickens. */
const LONGEST_FOLLOWED = 104

/**
 * A graft takes a rootstock whose stem lies in the caliper window of the cut, in the week in which it is worked.
 * Stems thicken at one pace, so each enters the window (grows past its lower bound) and leaves it later.
 *   workable(k, c, w) ≤ workable(k, c, w−1) + entered(k, c, w) − used(k, c, w)
 *   workable(k, c, w) ≤ still(k, c, w + 1) = entered until w − left until w + 1
 * Thickest are taken first. Rootstocks that leave the window stay on their bench. Where several cuts with their own
 * windows use one kind, each has these rows for its own uses; all uses together stand in `stockOfFinished`.
 */
export const rootstocksInTime: SeasonRule = draft => {
  draft.season.kinds.forEach((_, kind) => {
    const byWindow = grouped(draft.usesOf[kind]!, use => {
      const { minMm, maxMm } = courseOf(draft.season, use.way, use.week).rootstock!
      return `${minMm}-${maxMm} mm`
    })
    for (const [window, uses] of byWindow) workableStems(draft, kind, window, uses)
  })
}

function workableStems(
  draft: SeasonDraft,
  kind: number,
  window: string,
  uses: readonly RootstockUseColumn[],
) {
  const { season, model } = draft
  const first = uses[0]!
  const { minMm, maxMm } = courseOf(season, first.way, first.week).rootstock!
  const makers = draft.startsOf[kind]!
  const batches = season.batches.filter(batch => batch.kind === kind && !batch.onHold)
  const unmeasured =
    makers.every(({ way, week }) => courseOf(season, way, week).caliper === null) &&
    batches.every(batch => batch.course.caliper === null)
  if (unmeasured) return

  const about = `${season.kinds[kind]!.id}, ${window}`
  const last = draft.spans[kind]!.to
  const enteredLive = new Float64Array(last + 1)
  const leftLive = new Float64Array(last + 1)
  for (const { course, ready } of batches)
    spreadOver(last, 0, ready, workableByAge(course.caliper, minMm, maxMm), enteredLive, leftLive)

  const stockRow: number[] = []
  const stillRow: number[] = []
  const still: number[] = []
  for (let week = 0; week <= last; week++) {
    const change = (week > 0 ? enteredLive[week - 1]! : 0) - leftLive[week]!
    stockRow.push(
      model.row({ rule: 'rootstocksInTime', subject: kind, about, week, upper: enteredLive[week]! }),
    )
    stillRow.push(model.row({ rule: 'stemsStill', subject: kind, about, week, lower: change, upper: change }))
    const name = `still/${about}/${week}`
    still.push(model.column({ name, part: 'holding', cost: 0, lower: Number.NEGATIVE_INFINITY }))
    model.put(stillRow[week]!, still[week]!, 1)
    if (week > 0) model.put(stillRow[week]!, still[week - 1]!, -1)
  }
  for (let week = 0; week < last; week++) {
    const column = model.column({ name: `workable/${about}/${week}`, part: 'holding', cost: 0 })
    model.put(stockRow[week]!, column, 1)
    model.put(stockRow[week + 1]!, column, -1)
    const row = model.row({ rule: 'notTooThick', subject: kind, about, week, upper: 0 })
    model.put(row, column, 1)
    model.put(row, still[week + 1]!, -1)
  }

  const shares = new Map<Course, ReturnType<typeof workableByAge>>()
  const entered = new Float64Array(last + 1)
  const left = new Float64Array(last + 1)
  for (const { way, week, column } of makers) {
    const course = courseOf(season, way, week)
    if (!shares.has(course)) shares.set(course, workableByAge(course.caliper, minMm, maxMm))
    entered.fill(0)
    left.fill(0)
    spreadOver(last, week, course.ready, shares.get(course)!, entered, left)
    for (let w = week; w <= last; w++) {
      model.put(stockRow[w]!, column, -entered[w]!)
      model.put(stillRow[w]!, column, left[w]! - (w > week ? entered[w - 1]! : 0))
    }
  }
  for (const { week, column } of draft.bought.filter(bought => bought.kind === kind)) {
    model.put(stockRow[week]!, column, -1)
    if (week < last) model.put(stillRow[week + 1]!, column, -1)
  }
  for (const { useWeek, column, perPlant } of uses)
    if (useWeek <= last) model.put(stockRow[useWeek]!, column, perPlant)
}

/**
 * Share of stems that enter a caliper window, and that leave it, in each week since they were ready.
 * d = d₀ + growth · weeks, d₀ ~ Normal(mean, (spread · mean)²). Without a growth curve all are inside from the first.
 * @example workableByAge({ meanMmWhenReady: 8, mmPerWeek: 0, spreadShare: 0.125 }, 7, 9) // 0.683 enter, none leave
 */
export function workableByAge(
  caliper: Course['caliper'],
  minMm: number,
  maxMm: number,
): { readonly enters: Float64Array; readonly leaves: Float64Array } {
  if (!caliper) return { enters: Float64Array.of(1), leaves: Float64Array.of(0) }
  const { meanMmWhenReady, mmPerWeek, spreadShare } = caliper
  const sd = spreadShare * meanMmWhenReady
  const thickerThan = (mm: number) =>
    sd === 0 ? Number(meanMmWhenReady >= mm) : 1 - normalCdf((mm - meanMmWhenReady) / sd)
  const enters: number[] = []
  const leaves: number[] = []
  // What is too thick from the first never enters.
  const never = rounded(thickerThan(maxMm + 1e-9))
  let entered = never
  let left = never
  for (let age = 0; age < LONGEST_FOLLOWED && left < 1; age++) {
    const enteredNow = rounded(thickerThan(minMm - mmPerWeek * age))
    // Exactly at the upper bound is still workable.
    const leftNow = rounded(thickerThan(maxMm + 1e-9 - mmPerWeek * age))
    enters.push(enteredNow - entered)
    leaves.push(leftNow - left)
    entered = enteredNow
    left = leftNow
    if (mmPerWeek === 0) break
  }
  return { enters: Float64Array.from(enters), leaves: Float64Array.from(leaves) }
}

/** Tails under half a per cent are counted into their neighbour. */
const rounded = (share: number) => (share < 0.005 ? 0 : share > 0.995 ? 1 : share)

function spreadOver(
  last: number,
  from: number,
  ready: Float64Array,
  { enters, leaves }: { readonly enters: Float64Array; readonly leaves: Float64Array },
  entered: Float64Array,
  left: Float64Array,
): void {
  for (let k = 0; k < ready.length; k++) {
    if (ready[k] === 0) continue
    const most = Math.min(enters.length, last + 1 - from - k)
    for (let age = 0; age < most; age++) {
      entered[from + k + age]! += ready[k]! * enters[age]!
      left[from + k + age]! += ready[k]! * leaves[age]!
    }
  }
}
