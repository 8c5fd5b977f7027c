import { normalCdf } from '../../science/index.ts'
import { grouped } from '../grouped.ts'
import type { RootstockUseColumn } from '../model/season-model.ts'
import type { Course, Season } from '../season.ts'
import { courseOf, type SeasonDraft, type SeasonRule } from './season-draft.ts'

/** Weeks after a rootstock is ready beyond which we no longer follow how it thickens. */
const LONGEST_FOLLOWED = 104

/**
 * A graft takes a rootstock whose stem lies in the caliper window of the cut, in the week in which it is worked.
 * Stems thicken at one pace, and not at all in the still weeks of winter, so each enters the window (grows past its lower bound) and leaves it later. In the weeks
 * u₁ < u₂ < … in which rootstocks of the kind are worked with a cut:
 *   workable(k, c, uᵢ) ≤ workable(k, c, uᵢ₋₁) + entered(uᵢ₋₁ + 1 … uᵢ) − used(k, c, uᵢ)
 *   workable(k, c, uᵢ) ≤ entered until uᵢ − left until uᵢ₊₁
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
): void {
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
  const takes = Int32Array.from(
    new Set(uses.map(use => use.useWeek).filter(week => week < season.weeks)),
  ).sort()
  const count = takes.length
  if (count === 0) return

  /** Entered and left until each week, summed up. */
  const stems = { entered: new Float64Array(season.weeks), left: new Float64Array(season.weeks) }
  const sumUp = (parts: readonly { from: number; ready: Float64Array; course: Course }[]) => {
    stems.entered.fill(0)
    stems.left.fill(0)
    for (const { from, ready, course } of parts) {
      if (!shares.has(course)) shares.set(course, workableByAge(course.caliper, minMm, maxMm))
      spreadOver(season, from, ready, shares.get(course)!, stems.entered, stems.left)
    }
    for (let week = 1; week < season.weeks; week++) {
      stems.entered[week]! += stems.entered[week - 1]!
      stems.left[week]! += stems.left[week - 1]!
    }
  }
  const shares = new Map<Course, ReturnType<typeof workableByAge>>()
  /** Of those that entered since the last use, the ones that are still workable in this. */
  const entersFor = (i: number) => {
    const before = i > 0 ? stems.entered[takes[i - 1]!]! : 0
    return Math.max(0, stems.entered[takes[i]!]! - Math.max(before, stems.left[takes[i]!]!))
  }
  /** Workable at a use, and still at the next. */
  const staysFor = (i: number) => Math.max(0, stems.entered[takes[i]!]! - stems.left[takes[i + 1]!]!)

  sumUp(batches.map(({ course, ready }) => ({ from: 0, ready, course })))
  const stockRow = Array.from(takes, (week, i) =>
    model.row({ rule: 'rootstocksInTime', subject: kind, about, week, upper: entersFor(i) }),
  )
  const stillRow = Array.from({ length: count - 1 }, (_, i) =>
    model.row({ rule: 'notTooThick', subject: kind, about, week: takes[i]!, upper: staysFor(i) }),
  )
  stillRow.forEach((row, i) => {
    const column = model.column({ name: `workable/${about}/${takes[i]}`, part: 'holding', cost: 0 })
    model.put(row, column, 1)
    model.put(stockRow[i]!, column, 1)
    model.put(stockRow[i + 1]!, column, -1)
  })

  const put = (column: number) => {
    for (let i = 0; i < count; i++) {
      model.put(stockRow[i]!, column, -entersFor(i))
      if (i + 1 < count) model.put(stillRow[i]!, column, -staysFor(i))
    }
  }
  for (const { way, week, column } of makers) {
    const course = courseOf(season, way, week)
    sumUp([{ from: week, ready: course.ready, course }])
    put(column)
  }
  // What is bought in is bought of the right size, and not followed further.
  for (const { week, column } of draft.bought.filter(bought => bought.kind === kind)) {
    stems.entered.fill(0).fill(1, week)
    stems.left.fill(0)
    put(column)
  }
  for (const { useWeek, column, perPlant } of uses)
    if (useWeek < season.weeks) model.put(stockRow[takes.indexOf(useWeek)]!, column, perPlant)
}

/**
 * Share of stems that enter a caliper window, and that leave it, in each week of growth since they were ready.
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

/** Adds the stems that enter and leave in each week; in weeks in which stems stand still none do. */
function spreadOver(
  { weeks, growing }: Pick<Season, 'weeks' | 'growing'>,
  from: number,
  ready: Float64Array,
  { enters, leaves }: { readonly enters: Float64Array; readonly leaves: Float64Array },
  entered: Float64Array,
  left: Float64Array,
): void {
  for (let k = 0; k < ready.length; k++) {
    if (ready[k] === 0) continue
    for (let week = from + k, grown = 0; week < weeks && grown < enters.length; week++) {
      if (week > from + k && growing?.[week] === 0) continue
      entered[week]! += ready[k]! * enters[grown]!
      left[week]! += ready[k]! * leaves[grown]!
      grown++
    }
  }
}
