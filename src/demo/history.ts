import type { Source } from '../record/index.ts'
import { dateOf, dayNumber, dayText, drawBinomial, type SeededRandom } from '../science/index.ts'
import {
  BatchId,
  type BenchId,
  type MotherId,
  type PersonId,
  type Protocol,
  StepId,
  windowMonths,
} from '../trade/index.ts'
import { buyers } from './fruits.ts'
import { type Grown, type NurseryList, typicalSurvival } from './nursery-list.ts'
import { benches, people } from './place.ts'
import type { Teller } from './teller.ts'
import type { Truth } from './truth.ts'

/** Plants that are, or will be, finished: what orders may be given out of. */
export interface Finishing {
  readonly batch: BatchId
  readonly kind: string
  readonly day: number
  left: number
  readonly usableDays: number
}

const CAUSES = ['dried out', 'root rot', 'slugs', 'broken in moving', 'stunted, thrown out'] as const
const HISTORY_DAYS = 1_100
const FINISHED = StepId.parse('finished')

interface PlannedBatch {
  readonly day: number
  readonly item: Grown
  readonly protocol: Protocol
  readonly number: number
}

const pick = <T>(random: SeededRandom, from: readonly T[]): T =>
  from[Math.floor(random.uniform() * from.length)]!

/** Begin days of the last three years: one to three batches in each yearly window. */
const plannedBatches = (list: NurseryList, random: SeededRandom, today: number): PlannedBatch[] => {
  const planned: PlannedBatch[] = []
  const firstYear = dateOf(today - HISTORY_DAYS).year
  const lastYear = dateOf(today).year
  for (const [nth, item] of [...list.stocks, ...list.trees].entries())
    for (const [way, protocol] of item.protocols.entries())
      for (let year = firstYear; year <= lastYear; year++) {
        const luck = random.stream(nth * 1_000 + way * 100 + (year - firstYear))
        const share = item.protocols.length === 1 ? 1 : way === 0 ? 0.7 : 0.3
        const wanted = (item.yearly * share * (0.85 + 0.3 * luck.uniform()) * 1.1) / typicalSurvival(protocol)
        const parts = Math.min(3, Math.max(1, Math.round(wanted / 180)))
        const months = windowMonths(protocol.window, 'north')
        for (let part = 0; part < parts; part++) {
          const month =
            months[Math.min(months.length - 1, Math.floor(((part + luck.uniform()) / parts) * months.length))]
          if (month === undefined) continue
          const day =
            dayNumber(`${year}-${String(month).padStart(2, '0')}-01`) + Math.floor(luck.uniform() * 26)
          if (day < today - HISTORY_DAYS || day > today) continue
          const number = Math.max(
            protocol.smallestBatch,
            Math.round(wanted / parts / protocol.tray) * protocol.tray,
          )
          planned.push({ day, item, protocol, number })
        }
      }
  return planned.sort((a, b) => a.day - b.day)
}

/** Tells three years of the nursery's life, and what of it is still to be finished. */
export const tellHistory = (
  list: NurseryList,
  truth: Truth,
  random: SeededRandom,
  teller: Teller,
  today: string,
): Finishing[] => {
  const todayNumber = dayNumber(today)
  const finishing: Finishing[] = []
  const perYear = new Map<number, number>()

  /** The bigger the bench, the more often it is the one. */
  const benchFor = (place: string, luck: SeededRandom): BenchId | null => {
    const fitting = benches.filter(bench => bench.place === place)
    let at = luck.uniform() * fitting.reduce((sum, bench) => sum + bench.areaSquareMetres, 0)
    for (const bench of fitting) {
      at -= bench.areaSquareMetres
      if (at <= 0) return bench.id
    }
    return fitting.at(-1)?.id ?? null
  }

  const handFor = (protocol: Protocol, luck: SeededRandom): PersonId => {
    const skill = protocol.steps[0]!.work[0]?.skill ?? 'general'
    return pick(
      luck,
      people.filter(person => person.skills.includes(skill)),
    ).id
  }

  const rootstocksFor = (item: Grown, day: number, wanted: number): Source[] => {
    const sources: Source[] = []
    let missing = wanted
    for (const stock of finishing) {
      if (missing === 0) break
      if (
        stock.kind !== item.kind.rootstock ||
        stock.day > day ||
        stock.day + stock.usableDays < day ||
        stock.left === 0
      )
        continue
      const number = Math.min(missing, stock.left)
      stock.left -= number
      missing -= number
      sources.push({ from: 'batch', batch: stock.batch, as: 'rootstock', number })
    }
    if (missing > 0)
      sources.push({
        from: 'bought',
        supplier: 'a grower up the valley',
        material: 'rootstock',
        number: missing,
      })
    return sources
  }

  const sourcesFor = (planned: PlannedBatch, luck: SeededRandom): Source[] => {
    const { item, protocol, number, day } = planned
    return protocol.takes.flatMap((taking): Source[] => {
      if (taking.what === 'rootstock') return rootstocksFor(item, day, number)
      const mothersFrom = (of: (mother: NurseryList['mothers'][number]) => boolean): Source[] => {
        const giving = list.mothers.filter(
          mother => of(mother) && mother.gives.some(({ material }) => material === taking.material),
        )
        if (giving.length === 0)
          return [
            {
              from: 'bought',
              supplier: 'a grower up the valley',
              material: taking.material,
              number: Math.ceil(number * taking.perPlant),
            },
          ]
        const first = Math.floor(luck.uniform() * giving.length)
        const used: MotherId[] = [...new Set([giving[first]!.id, giving[(first + 1) % giving.length]!.id])]
        const all = Math.ceil(number * taking.perPlant)
        return used.map((mother, at) => ({
          from: 'mother',
          mother,
          material: taking.material,
          number: at === 0 ? Math.ceil(all / used.length) : Math.max(1, Math.floor(all / used.length)),
        }))
      }
      if (item.cultivars.length === 0 || taking.part === 'rootstock')
        return mothersFrom(mother => mother.rootstockKind === (item.kind.rootstock ?? item.kind.id))
      return item.cultivars.flatMap(cultivar => mothersFrom(mother => mother.cultivar === cultivar.id))
    })
  }

  const sell = (stock: Finishing, luck: SeededRandom): void => {
    let day = stock.day + 6 + Math.floor(luck.uniform() * 30)
    while (stock.left > 0 && day <= todayNumber) {
      const number = Math.min(stock.left, Math.max(5, Math.round(stock.left * (0.3 + 0.5 * luck.uniform()))))
      if (day > stock.day + stock.usableDays) {
        teller.tell(dayText(day), null, {
          kind: 'lost/1',
          batch: stock.batch,
          step: FINISHED,
          number: stock.left,
          cause: 'past its best, thrown out',
        })
        stock.left = 0
        return
      }
      teller.tell(dayText(day), null, {
        kind: 'dispatched/1',
        batch: stock.batch,
        order: null,
        number,
        to: pick(luck, buyers),
      })
      stock.left -= number
      day += 7 + Math.floor(luck.uniform() * 35)
    }
  }

  for (const [nth, planned] of plannedBatches(list, random.stream(1), todayNumber).entries()) {
    const luck = random.stream(2).stream(nth)
    const { item, protocol, day: began } = planned
    const year = dateOf(began).year
    const number = (perYear.get(year) ?? 0) + 1
    perYear.set(year, number)
    const name = `${String(year).slice(2)}-${String(number).padStart(3, '0')}`
    const batch = BatchId.parse(name)
    const by = handFor(protocol, luck)
    const first = protocol.steps[0]!
    teller.tell(dayText(began), by, {
      kind: 'batch-started/1',
      batch,
      name,
      kindOfTree: item.kind.id,
      protocol: protocol.id,
      number: planned.number,
      sources: sourcesFor(planned, luck),
      bench: benchFor(first.place, luck),
      workedBy: [by],
      candidates: [],
    })

    let alive = planned.number
    let day = began
    for (const [at, step] of protocol.steps.entries()) {
      const entered = alive
      const days = truth.days(luck, step)
      const left = truth.survivors(luck, entered, step, protocol, item.kind.id, year, by)
      const dead = entered - left
      const isLooked = step.sign !== 'alive' && step.sign !== 'saleable'
      if (isLooked) {
        const deadEarly = days >= 14 ? drawBinomial(luck, dead, 0.5) : 0
        const takenEarly = drawBinomial(luck, left, 0.6)
        if (days >= 14)
          teller.tell(dayText(day + Math.round(days * 0.55)), by, {
            kind: 'counted/1',
            batch,
            step: step.id,
            sign: step.sign,
            taken: takenEarly,
            dead: deadEarly,
            undecided: entered - takenEarly - deadEarly,
          })
        teller.tell(dayText(day + days), by, {
          kind: 'counted/1',
          batch,
          step: step.id,
          sign: step.sign,
          taken: left,
          dead: dead - deadEarly,
          undecided: 0,
        })
      } else if (dead > 0) {
        const early = drawBinomial(luck, dead, 0.5)
        if (early > 0)
          teller.tell(dayText(day + Math.round(days * 0.4)), by, {
            kind: 'lost/1',
            batch,
            step: step.id,
            number: early,
            cause: pick(luck, CAUSES),
          })
        if (dead > early)
          teller.tell(dayText(day + days), by, {
            kind: 'lost/1',
            batch,
            step: step.id,
            number: dead - early,
            cause: pick(luck, CAUSES),
          })
      }
      day += days
      alive = left
      if (alive === 0) break
      const next = protocol.steps[at + 1]
      if (next === undefined)
        teller.tell(dayText(day), by, { kind: 'finished/1', batch, number: alive, grade: '' })
      else
        teller.tell(dayText(day), by, {
          kind: 'advanced/1',
          batch,
          from: step.id,
          to: next.id,
          number: alive,
          bench: benchFor(next.place, luck),
        })
    }
    if (alive === 0) continue
    const stock: Finishing = { batch, kind: item.kind.id, day, left: alive, usableDays: protocol.usableDays }
    finishing.push(stock)
    if (item.line.form !== 'rootstock') sell(stock, luck)
  }

  for (const stock of finishing) {
    const outAt = stock.day + stock.usableDays
    if (stock.left > 0 && outAt <= todayNumber)
      teller.tell(dayText(outAt), null, {
        kind: 'lost/1',
        batch: stock.batch,
        step: FINISHED,
        number: stock.left,
        cause: 'past use, thrown out',
      })
  }
  return finishing.filter(stock => stock.left > 0 && stock.day + stock.usableDays > todayNumber)
}
