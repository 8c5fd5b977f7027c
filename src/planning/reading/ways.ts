import type { Nursery } from '../../record/index.ts'
import {
  type Hemisphere,
  type Kind,
  type Phrase,
  type Protocol,
  phrase,
  type Way,
  wayName,
  windowMonths,
} from '../../trade/index.ts'
import type { Course, SeasonStart, SeasonWay } from '../season.ts'
import { type CourseReading, readCourse, readSteps } from './course.ts'
import { cultivarsOf, licensedUntil } from './licences.ts'
import type { Weeks } from './weeks.ts'

export const hemisphereOf = (nursery: Nursery): Hemisphere =>
  (nursery.site?.latitudeDegrees ?? 0) < 0 ? 'south' : 'north'

/** Every way to make every kind, with the weeks in which it may begin and what becomes of what is begun. */
export function readWays(
  nursery: Nursery,
  weeks: Weeks,
  reading: CourseReading,
  yearGroups: string[],
  accepted: readonly { kind: string; protocol: string; week: number }[],
  assumed: Phrase[],
): SeasonWay[] {
  const hemisphere = hemisphereOf(nursery)
  const ways: SeasonWay[] = []
  for (const kind of nursery.kinds.values())
    for (const way of kind.ways) {
      const protocol = nursery.protocols.get(way.protocol)
      if (!protocol) {
        assumed.push(
          phrase('{kind} cannot be made by {protocol}: that protocol is not registered.', {
            kind: kind.name,
            protocol: way.protocol,
          }),
        )
        continue
      }
      const { courses, courseOfWeek } = coursesByMonth(kind, way, protocol, weeks, reading)
      const isStarted = new Set(
        accepted.filter(a => a.kind === kind.id && a.protocol === protocol.id).map(a => a.week),
      )
      const course = courses[0]!
      if (course.rootstock?.kinds.length === 0) {
        assumed.push(
          phrase('{kind} is not begun by {protocol}: no rootstock kind is named for it.', {
            kind: kind.name,
            protocol: protocol.name,
          }),
        )
        continue
      }
      const missing = protocol.steps.find(
        (step, s) => step.plantsPerSquareMetre !== null && course.steps[s]!.place === null,
      )
      if (missing) {
        assumed.push(
          phrase('{kind} by {protocol}: no bench is a {place}, so no area is counted for "{step}".', {
            kind: kind.name,
            protocol: protocol.name,
            place: phrase(missing.place),
            step: phrase(missing.name),
          }),
        )
      }
      ways.push({
        name: wayName(kind.id, protocol.id),
        kind: reading.kindIndex.get(kind.id)!,
        protocol,
        method: protocol.method,
        yearGroup: yearGroupIndex(yearGroups, `${protocol.method}, ${kind.species}`),
        open: openWeeks(
          weeks,
          windowMonths(protocol.window, hemisphere),
          course,
          licensedUntil(nursery, kind),
          isStarted,
        ),
        tray: protocol.tray,
        smallestBatch: protocol.smallestBatch,
        costPerPlant: costPerPlant(nursery, kind, protocol, course),
        courseOfWeek,
        courses,
      })
    }
  return ways
}

export function yearGroupIndex(yearGroups: string[], group: string): number {
  const known = yearGroups.indexOf(group)
  return known >= 0 ? known : yearGroups.push(group) - 1
}

/** One course for each set of rates: months that share their rates share their course. */
function coursesByMonth(kind: Kind, way: Way, protocol: Protocol, weeks: Weeks, reading: CourseReading) {
  const courses: Course[] = []
  const indexByRates = new Map<string, number>()
  const indexByMonth = new Map<number, number>()
  const courseOfWeek = Int16Array.from({ length: weeks.count }, (_, week) => {
    const month = weeks.month(week)
    const known = indexByMonth.get(month)
    if (known !== undefined) return known
    const rates = readSteps(kind, protocol, month, reading)
      .map(({ alpha, beta, medianDays }) => `${alpha} ${beta} ${medianDays}`)
      .join('\n')
    const index = indexByRates.get(rates) ?? courses.push(readCourse(kind, way, protocol, month, reading)) - 1
    indexByRates.set(rates, index)
    indexByMonth.set(month, index)
    return index
  })
  return { courses, courseOfWeek }
}

/**
 * A week is open when the protocol's months hold its Thursday, the licence has not ended, and there is still time for
 * what comes before the start. A start already accepted keeps its week: its preparation is under way.
 * A protocol without months may begin at any time.
 */
function openWeeks(
  weeks: Weeks,
  months: readonly number[],
  course: Course,
  licensed: string | null,
  accepted: ReadonlySet<number>,
): Uint8Array {
  return Uint8Array.from({ length: weeks.count }, (_, week) => {
    const inMonths = months.length === 0 || months.includes(weeks.month(week))
    const inLicence = licensed === null || week <= weeks.endingBy(licensed)
    const inTime = week + course.firstOffset >= 0 || accepted.has(week)
    return Number(inMonths && inLicence && inTime)
  })
}

/** Medium, pots and ties of every step for those that reach it, and the fees of protected cultivars. */
function costPerPlant(nursery: Nursery, kind: Kind, protocol: Protocol, course: Course): number {
  let alive = 1
  let cost = cultivarsOf(kind).reduce(
    (sum, id) => sum + (nursery.cultivars.get(id)?.licence?.feePerTree ?? 0),
    0,
  )
  protocol.steps.forEach((step, s) => {
    cost += alive * step.materialCostPerPlant
    const { alpha, beta } = course.steps[s]!
    alive *= alpha / (alpha + beta)
  })
  return cost
}

/** Starts accepted or fixed and still to come, by way. */
export function startsByWay(
  ways: readonly SeasonWay[],
  kindIds: readonly string[],
  starts: readonly { kind: string; protocol: string; week: number; number: number }[],
): SeasonStart[] {
  return starts.flatMap(({ kind, protocol, week, number }) => {
    const way = ways.findIndex(w => kindIds[w.kind] === kind && w.protocol.id === protocol)
    return way < 0 || number <= 0 ? [] : [{ way, week, number }]
  })
}
