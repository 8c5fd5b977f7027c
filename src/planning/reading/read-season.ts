import { heldThings, type Nursery } from '../../record/index.ts'
import { weekNumber } from '../../science/index.ts'
import type { KindId, Phrase, PlaceKind } from '../../trade/index.ts'
import { readRateBook } from '../rates/read-rate-book.ts'
import type { Season, SeasonKind } from '../season.ts'
import { batchMinutesSaid } from './batch-minutes.ts'
import { readBatches } from './batches.ts'
import type { CourseReading } from './course.ts'
import { groundForMothers } from './ground-for-mothers.ts'
import { growingWeeks } from './growing-weeks.ts'
import { readLicences } from './licences.ts'
import { readOrders } from './orders.ts'
import { readPeople } from './people.ts'
import { readPlaces } from './places.ts'
import { readPools } from './pools.ts'
import { begunSince, readStartSets } from './start-sets.ts'
import { readWays, startsByWay } from './ways.ts'
import { seasonWeeks } from './weeks.ts'
import { withYoungMothers } from './young-mothers.ts'

const FEWEST_WEEKS = 104
const MOST_WEEKS = 320
const WEEKS_AFTER_LAST_ORDER = 4
/**
 * Of its price, what planning a tree for later than its due week costs beside the weeks: a due week is a promise that
 * the plan keeps where it can. Our choice, no source; the nursery's own prices for lateness come on top.
 */
const MISSED_SHARE = 1.2

/** Reads a nursery on a day as a season: everything that the model and the simulator need, as plain numbers by week. */
export function readSeason(nursery: Nursery, today: string): Season {
  const assumed: Phrase[] = [batchMinutesSaid]
  const kindIndex = new Map<KindId, number>([...nursery.kinds.keys()].map((id, index) => [id, index]))
  const weeks = seasonWeeks(today, horizon(nursery, today))
  const held = heldThings(nursery)
  const places = readPlaces(nursery, weeks, held)
  const placeIndex = new Map<PlaceKind, number>(places.map(({ place }, index) => [place, index]))
  const { pools, poolsFor } = readPools(nursery, weeks, held, assumed)
  const reading: CourseReading = { book: readRateBook(nursery, today), placeIndex, kindIndex, poolsFor }

  const { set, isReplaced } = readStartSets(nursery, weeks.first, weeks.count)
  const accepted = (nursery.acceptedPlan?.starts ?? [])
    .filter(({ start }) => !isReplaced(start))
    .map(start => ({
      kind: start.kindOfTree,
      protocol: start.protocol,
      week: weekNumber(start.week) - weeks.first,
      number: start.number - begunSince(nursery, { kind: start.kindOfTree, ...start }),
      isDone: nursery.tasksDone.has(`${start.start}/start`),
    }))
    .filter(({ week, number, isDone }) => week >= 0 && week < weeks.count && number > 0 && !isDone)

  const yearGroups: string[] = []
  const ways = readWays(nursery, weeks, reading, yearGroups, [...accepted, ...set], assumed)
  const batches = readBatches(nursery, weeks, reading, held, yearGroups, assumed)
  const orders = readOrders(nursery, weeks, kindIndex, assumed)
  const kinds = readKinds(nursery, placeIndex)
  const { prices } = nursery
  const ground = groundForMothers(nursery, places)
  return {
    firstWeek: weeks.first,
    weeks: weeks.count,
    kinds,
    places,
    people: readPeople(nursery, weeks),
    pools: withYoungMothers(pools, ways, kinds, orders),
    ways,
    batches,
    orders,
    licences: readLicences(nursery, weeks, kindIndex),
    prices: {
      minute: prices.hour / 60,
      overtimeMinute: prices.overtimeHour / 60,
      missedShare: MISSED_SHARE,
      latePerWeekShare: prices.latePerWeekShare,
      shortShare: prices.shortShare,
    },
    accepted: startsByWay(ways, [...kindIndex.keys()], accepted),
    set: startsByWay(ways, [...kindIndex.keys()], set).filter(({ way, week }) => ways[way]!.open[week]),
    worthOfMoving: nursery.settings.worthOfMoving,
    growing: growingWeeks(nursery, weeks),
    ...(ground === undefined ? {} : { groundForMothers: ground }),
    yearGroups,
    assumed,
  }
}

/** From this week to four weeks past the last order, at least 104 weeks. */
function horizon(nursery: Nursery, today: string): number {
  const weeks = seasonWeeks(today, 0)
  const last = Math.max(
    0,
    ...[...nursery.orders.values()]
      .filter(({ cancelled }) => !cancelled)
      .map(({ order }) => weeks.of(order.latest)),
  )
  return Math.min(MOST_WEEKS, Math.max(FEWEST_WEEKS, last + WEEKS_AFTER_LAST_ORDER + 1))
}

/** A finished plant stands where the last step of its protocol does, and keeps as long as that says. */
function readKinds(nursery: Nursery, placeIndex: ReadonlyMap<PlaceKind, number>): SeasonKind[] {
  return [...nursery.kinds.values()].map(kind => {
    const protocols = kind.ways.flatMap(way => nursery.protocols.get(way.protocol) ?? [])
    const last = protocols[0]?.steps.at(-1)
    const place = last ? placeIndex.get(last.place) : undefined
    const density = last?.plantsPerSquareMetre?.typical ?? 0
    return {
      id: kind.id,
      name: kind.name,
      isRootstock: kind.form === 'rootstock',
      usableWeeks:
        protocols.length === 0 ? MOST_WEEKS : Math.floor(Math.min(...protocols.map(p => p.usableDays)) / 7),
      holdingCostPerWeek: kind.holdingCostPerWeek,
      price: kind.price,
      buyIn: kind.buyIn,
      standsAt: place !== undefined && density > 0 ? { place, squareMetres: 1 / density } : null,
    }
  })
}
