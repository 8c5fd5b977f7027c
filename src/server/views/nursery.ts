import type { NurseryView } from '../../api/index.ts'
import type { Nursery } from '../../record/index.ts'
import { type Hemisphere, windowMonths } from '../../trade/index.ts'
import { weekOfDayText } from './week.ts'

const isAlive = (batch: { portions: readonly { number: number }[]; finished: number }): boolean =>
  batch.finished > 0 || batch.portions.some(portion => portion.number > 0)

const hemisphereOf = ({ site }: Nursery): Hemisphere =>
  site !== null && site.latitudeDegrees < 0 ? 'south' : 'north'

export const nurseryView = (
  nursery: Nursery,
  today: string,
  { throughSeq, lastHash, isInvented }: Pick<NurseryView, 'throughSeq' | 'lastHash' | 'isInvented'>,
): NurseryView => {
  let batches = 0
  let plants = 0
  let last = 0
  const year = today.slice(2, 4)
  for (const batch of nursery.batches.values()) {
    if (batch.name.startsWith(`${year}-`))
      last = Math.max(last, Number(/^\d{2}-(\d+)$/.exec(batch.name)?.[1] ?? 0))
    if (!isAlive(batch)) continue
    batches += 1
    plants += batch.finished + batch.portions.reduce((sum, portion) => sum + portion.number, 0)
  }
  return {
    site: nursery.site,
    today,
    week: weekOfDayText(today),
    throughSeq,
    lastHash,
    isInvented,
    settings: nursery.settings,
    prices: nursery.prices,
    benches: [...nursery.benches.values()],
    people: [...nursery.people.values()],
    cultivars: [...nursery.cultivars.values()],
    kinds: [...nursery.kinds.values()],
    protocols: [...nursery.protocols.values()].map(
      ({ id, name, version, method, species, takes, window, steps }) => ({
        id,
        name,
        version,
        method,
        species,
        takes: [...takes],
        window: {
          condition: window.condition,
          months: [...windowMonths(window, hemisphereOf(nursery))],
          basis: window.basis,
        },
        steps: steps.map(step => ({ id: step.id, name: step.name, place: step.place, sign: step.sign })),
      }),
    ),
    speciesSets: [...nursery.speciesSets],
    factSets: [...nursery.factSets],
    lastBatchName: last === 0 ? null : `${year}-${String(last).padStart(3, '0')}`,
    counts: {
      batches,
      plants,
      mothers: nursery.mothers.size,
      openOrders: [...nursery.orders.values()].filter(o => !o.cancelled && o.dispatched < o.order.number)
        .length,
      queries: nursery.queries.length,
      holds: [...nursery.holds.values()].filter(hold => hold.released === null).length,
    },
  }
}
