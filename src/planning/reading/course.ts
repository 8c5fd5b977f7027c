import type { Kind, PlaceKind, Protocol, Skill, Way } from '../../trade/index.ts'
import { DAY_OF_START, daysToReady, shareReadyByWeek } from '../rates/days-to-ready.ts'
import type { RateBook } from '../rates/rate-book.ts'
import type { Course, CourseStep } from '../season.ts'

/** Shares of a week under this are counted into the next. */
const NEGLIGIBLE_SHARE = 0.002

export interface CourseReading {
  readonly book: RateBook
  readonly placeIndex: ReadonlyMap<PlaceKind, number>
  readonly kindIndex: ReadonlyMap<string, number>
  /** Pool that gives a material for a kind, or null where it is taken as bought. */
  readonly poolsFor: (kind: Kind, protocol: Protocol) => readonly { pool: number; perPlant: number }[]
}

/** What is expected of one plant of a kind begun by a protocol in a month. */
export function readCourse(
  kind: Kind,
  way: Way,
  protocol: Protocol,
  startMonth: number,
  reading: CourseReading,
): Course {
  const steps = readSteps(kind, protocol, startMonth, reading)
  const entered = enteredByWeek(steps)
  const survival = survivalBefore(steps)
  const prepareWeeks = Math.max(0, ...protocol.before.map(({ daysBefore }) => Math.ceil(daysBefore / 7)))
  return {
    steps,
    firstOffset: -prepareWeeks,
    area: areaByWeek(steps, entered, survival, prepareWeeks),
    labour: labourByWeek(protocol, entered, survival, prepareWeeks),
    material: reading.poolsFor(kind, protocol).map(({ pool, perPlant }) => ({ pool, offset: 0, perPlant })),
    rootstock: readRootstock(kind, way, protocol, steps, survival, reading),
    ready: readyByWeek(entered.at(-1)!, survival.at(-1)!),
    caliper: protocol.caliper,
  }
}

export function readSteps(
  kind: Kind,
  protocol: Protocol,
  startMonth: number,
  { book, placeIndex }: Pick<CourseReading, 'book' | 'placeIndex'>,
): CourseStep[] {
  return protocol.steps.map((step, index) => {
    const { alpha, beta, yearShare, used } = book.survival(protocol, index, { kind: kind.id, startMonth })
    const density = step.plantsPerSquareMetre?.typical ?? 0
    return {
      step: step.id,
      name: step.name,
      alpha,
      beta,
      yearShare,
      rate: used,
      ...book.days(protocol, index),
      place: density > 0 ? (placeIndex.get(step.place) ?? null) : null,
      squareMetresPerPlant: density > 0 ? 1 / density : 0,
    }
  })
}

/**
 * By step, and by week since the start: chance that a plant which lives has entered the step by the end of the week.
 * The last entry, after the last step, is for being finished.
 */
export function enteredByWeek(
  steps: readonly CourseStep[],
  daysIn = 0,
  dayOfStart = DAY_OF_START,
): Float64Array[] {
  const shares = steps.map((_, index) =>
    shareReadyByWeek(daysToReady(steps.slice(0, index + 1), daysIn), dayOfStart),
  )
  const length = Math.max(1, ...shares.map(share => share.length))
  const entered = [new Float64Array(length).fill(1)]
  for (const share of shares) {
    const sum = new Float64Array(length)
    let total = 0
    for (let week = 0; week < length; week++) {
      total += share[week] ?? 0
      sum[week] = total
    }
    entered.push(sum)
  }
  return entered
}

/** Share of those begun that enters each step; the last is the survival of the whole. */
export function survivalBefore(steps: readonly Pick<CourseStep, 'alpha' | 'beta'>[]): number[] {
  const survival = [1]
  for (const { alpha, beta } of steps) survival.push((survival.at(-1)! * alpha) / (alpha + beta))
  return survival
}

/** Plants take their area from when they enter a step until they, or their dead, leave it. */
function areaByWeek(
  steps: readonly CourseStep[],
  entered: readonly Float64Array[],
  survival: readonly number[],
  prepareWeeks: number,
): Course['area'] {
  const byPlace = new Map<number, Float64Array>()
  steps.forEach(({ place, squareMetresPerPlant }, s) => {
    if (place === null) return
    const length = entered[0]!.length
    const area = byPlace.get(place) ?? new Float64Array(prepareWeeks + length)
    for (let week = 0; week < length; week++)
      area[prepareWeeks + week]! += survival[s]! * standingIn(entered, s, week) * squareMetresPerPlant
    byPlace.set(place, area)
  })
  return [...byPlace].map(([place, area]) => ({ place, squareMetres: trimmed(area) }))
}

/** Share that is in a step at the end of a week; of a step begun and ended within the week, half of it is. */
export const standingIn = (entered: readonly Float64Array[], step: number, week: number): number =>
  entered[step]![week]! - entered[step + 1]![week]!

function labourByWeek(
  protocol: Protocol,
  entered: readonly Float64Array[],
  survival: readonly number[],
  prepareWeeks: number,
): Course['labour'] {
  const length = prepareWeeks + entered[0]!.length
  const bySkill = new Map<Skill, { perPlant: Float64Array; perBatch: Float64Array }>()
  const of = (skill: Skill) => {
    const known = bySkill.get(skill)
    if (known) return known
    const made = { perPlant: new Float64Array(length), perBatch: new Float64Array(length) }
    bySkill.set(skill, made)
    return made
  }
  for (const { daysBefore, skill, minutesPerPlant } of protocol.before)
    of(skill).perPlant[prepareWeeks - Math.ceil(daysBefore / 7)]! += minutesPerPlant.typical
  protocol.steps.forEach((step, s) => {
    for (const { skill, when, minutesPerPlant, minutesPerBatch } of step.work) {
      const { perPlant, perBatch } = of(skill)
      for (let week = 0; week < entered[0]!.length; week++) {
        const share =
          when === 'each week'
            ? standingIn(entered, s, week)
            : arriving(entered[when === 'begin' ? s : s + 1]!, week)
        const alive = when === 'end' ? survival[s + 1]! : survival[s]!
        perPlant[prepareWeeks + week]! += alive * share * minutesPerPlant.typical
        perBatch[prepareWeeks + week]! += share * minutesPerBatch
      }
    }
  })
  return [...bySkill].map(([skill, { perPlant, perBatch }]) => ({ skill, perPlant, perBatch }))
}

export const arriving = (entered: Float64Array, week: number): number =>
  entered[week]! - (week > 0 ? entered[week - 1]! : 0)

function readyByWeek(finished: Float64Array, survival: number): Float64Array {
  const ready = new Float64Array(finished.length)
  let small = 0
  for (let week = 0; week < finished.length; week++) {
    small += arriving(finished, week)
    if (small < NEGLIGIBLE_SHARE && finished[week]! < 1 - NEGLIGIBLE_SHARE) continue
    ready[week] = small * survival
    small = 0
  }
  return trimmed(ready)
}

/** Without the zeros at the end. */
function trimmed(values: Float64Array): Float64Array {
  let end = values.length
  while (end > 1 && values[end - 1]! < 1e-9) end--
  return values.slice(0, end)
}

function readRootstock(
  kind: Kind,
  way: Way,
  protocol: Protocol,
  steps: readonly CourseStep[],
  survival: readonly number[],
  { kindIndex }: CourseReading,
): Course['rootstock'] {
  const taking = protocol.takes.find(take => take.what === 'rootstock')
  if (!taking) return null
  const named = way.rootstocks.length > 0 ? way.rootstocks : kind.rootstock ? [kind.rootstock] : []
  const kinds = named.flatMap(id => kindIndex.get(id) ?? [])
  const step = Math.max(0, taking.atStep ? protocol.steps.findIndex(({ id }) => id === taking.atStep) : 0)
  return {
    kinds,
    offset: Math.floor((DAY_OF_START + daysToReady(steps.slice(0, step)).meanDays) / 7),
    perPlant: survival[step]!,
    minMm: taking.caliperMm.min,
    maxMm: taking.caliperMm.max,
  }
}
