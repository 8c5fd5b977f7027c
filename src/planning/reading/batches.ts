import type { Batch, HeldThings, Nursery } from '../../record/index.ts'
import { dateOf, dayNumber } from '../../science/index.ts'
import { type Kind, type Phrase, type Protocol, phrase, type Skill } from '../../trade/index.ts'
import type { Course, CourseStep, LiveBatch } from '../season.ts'
import { arriving, type CourseReading, enteredByWeek, readCourse, standingIn } from './course.ts'
import { weeksOfGrowth } from './growing-weeks.ts'
import { standingShare } from './standing-share.ts'
import { yearGroupIndex } from './ways.ts'
import type { Weeks } from './weeks.ts'

/** What stands now begins the rest of its way in the middle of this week. */
const MIDDLE_OF_WEEK = 3.5

/** The batches that have living plants, carried on from what was last counted. */
export function readBatches(
  nursery: Nursery,
  weeks: Weeks,
  reading: CourseReading,
  held: HeldThings,
  yearGroups: string[],
  assumed: Phrase[],
): LiveBatch[] {
  const live: LiveBatch[] = []
  for (const batch of nursery.batches.values()) {
    if (batch.finished <= 0 && batch.portions.every(({ number }) => number <= 0)) continue
    const kind = nursery.kinds.get(batch.kind)
    const protocol = nursery.protocols.get(batch.protocol)
    if (!kind || !protocol) {
      assumed.push(
        phrase(
          kind
            ? 'Batch {batch} is left out: its protocol is not registered.'
            : 'Batch {batch} is left out: its kind is not registered.',
          { batch: batch.name },
        ),
      )
      continue
    }
    live.push(
      readBatch(nursery, batch, kind, protocol, weeks, reading, held.batches.has(batch.id), yearGroups),
    )
  }
  return live
}

function readBatch(
  nursery: Nursery,
  batch: Batch,
  kind: Kind,
  protocol: Protocol,
  weeks: Weeks,
  reading: CourseReading,
  isHeld: boolean,
  yearGroups: string[],
): LiveBatch {
  const month = dateOf(dayNumber(batch.startedOn)).month
  const course = readCourse(kind, { protocol: protocol.id, rootstocks: [] }, protocol, month, reading)
  const { steps } = course
  const portions = batch.portions
    .filter(({ number }) => number > 0)
    .map(portion => {
      const step = Math.max(
        0,
        steps.findIndex(({ step: id }) => id === portion.step),
      )
      const daysIn = Math.max(0, weeks.today - dayNumber(portion.since))
      const { alpha, beta } = standingShare(steps[step]!, portion, daysIn)
      return { number: portion.number, step, daysIn, alpha, beta }
    })
  const ready = new Float64Array(weeks.count)
  ready[0]! += batch.finished
  const area = new Map<number, Float64Array>()
  const labour = new Map<Skill, Float64Array>()
  for (const portion of portions) carryOn(portion, protocol, steps, weeks.count, ready, area, labour)

  const finishedPortion = { number: batch.finished, step: steps.length, daysIn: 0, alpha: 1e9, beta: 1 }
  const finishedOn = batch.finishedOn ? dayNumber(batch.finishedOn) : weeks.today
  return {
    id: batch.id,
    name: batch.name,
    kind: reading.kindIndex.get(kind.id)!,
    yearGroup: yearGroupIndex(yearGroups, `${protocol.method}, ${kind.species}`),
    onHold: isHeld,
    finishedWeeksAgo: batch.finished > 0 ? Math.max(0, Math.floor((weeks.today - finishedOn) / 7)) : 0,
    portions: batch.finished > 0 ? [...portions, finishedPortion] : portions,
    course: { ...course, rootstock: null, caliper: measuredCaliper(nursery, batch, course, weeks.today) },
    ready,
    area: [...area].map(([place, squareMetres]) => ({ place, squareMetres })),
    labour: [...labour].map(([skill, minutes]) => ({ skill, minutes })),
  }
}

/** Adds what is expected of one portion from now on: finished by week, area by place, minutes by skill. */
function carryOn(
  portion: LiveBatch['portions'][number],
  protocol: Protocol,
  steps: readonly CourseStep[],
  count: number,
  ready: Float64Array,
  area: Map<number, Float64Array>,
  labour: Map<Skill, Float64Array>,
): void {
  const rest = steps.slice(portion.step)
  const entered = enteredByWeek(rest, portion.daysIn, MIDDLE_OF_WEEK)
  const length = Math.min(count, entered[0]!.length)
  let alive = portion.number
  rest.forEach((step, s) => {
    const { alpha, beta } = s === 0 ? portion : step
    const leaving = (alive * alpha) / (alpha + beta)
    if (step.place !== null) {
      const taken = area.get(step.place) ?? new Float64Array(count)
      for (let week = 0; week < length; week++)
        taken[week]! += alive * standingIn(entered, s, week) * step.squareMetresPerPlant
      area.set(step.place, taken)
    }
    for (const { skill, when, minutesPerPlant, minutesPerBatch } of protocol.steps[portion.step + s]!.work) {
      // What was to be done at the begin of the step that they stand in is done.
      if (s === 0 && when === 'begin') continue
      const minutes = labour.get(skill) ?? new Float64Array(count)
      for (let week = 0; week < length; week++) {
        const share =
          when === 'each week'
            ? standingIn(entered, s, week)
            : arriving(entered[when === 'begin' ? s : s + 1]!, week)
        const plants = when === 'end' ? leaving : alive
        minutes[week]! += share * (plants * minutesPerPlant.typical + minutesPerBatch)
      }
      labour.set(skill, minutes)
    }
    alive = leaving
  })
  const finished = entered.at(-1)!
  for (let week = 0; week < length; week++) ready[week]! += alive * arriving(finished, week)
}

/** The batch's own caliper where it was measured, carried on to when it is ready (or, if it is, to today). */
function measuredCaliper(nursery: Nursery, batch: Batch, course: Course, today: number): Course['caliper'] {
  const last = batch.calipers.at(-1)
  const { caliper } = course
  if (!caliper) return null
  if (!last) {
    if (batch.finished === 0 || !batch.finishedOn) return caliper
    const weeks = weeksOfGrowth(nursery, dayNumber(batch.finishedOn), today)
    return { ...caliper, meanMmWhenReady: caliper.meanMmWhenReady + caliper.mmPerWeek * weeks }
  }
  const mean = last.calipersMm.reduce((sum, mm) => sum + mm, 0) / last.calipersMm.length
  const variance =
    last.calipersMm.reduce((sum, mm) => sum + (mm - mean) ** 2, 0) / Math.max(1, last.calipersMm.length - 1)
  const spreadShare = last.calipersMm.length >= 10 ? Math.sqrt(variance) / mean : caliper.spreadShare
  const daysToReady = course.steps
    .slice(
      Math.max(
        0,
        course.steps.findIndex(({ step }) => step === last.step),
      ),
    )
    .reduce((sum, { medianDays }) => sum + medianDays, 0)
  const readyOn =
    batch.finished > 0 ? today : Math.max(today, dayNumber(batch.portions[0]?.since ?? last.on) + daysToReady)
  const weeks = weeksOfGrowth(nursery, dayNumber(last.on), readyOn)
  return { ...caliper, meanMmWhenReady: mean + caliper.mmPerWeek * weeks, spreadShare }
}
