import type { RateRow } from '../../api/index.ts'
import { latestSet, readRateBook } from '../../planning/index.ts'
import { type Nursery, observations } from '../../record/index.ts'

/** The rate behind every step of every way that the nursery uses, and what was seen of it. */
export const rateRows = (nursery: Nursery, today: string): RateRow[] => {
  const book = readRateBook(nursery, today)
  const sets = nursery.rateSets.filter(({ on }) => on <= today)
  const month = Number(today.slice(5, 7))
  const seen = new Map<string, { entered: number; survived: number }>()
  for (const row of observations(nursery)) {
    const key = `${row.kind}|${row.protocol}|${row.step}`
    const sum = seen.get(key) ?? { entered: 0, survived: 0 }
    seen.set(key, { entered: sum.entered + row.entered, survived: sum.survived + row.survived })
  }
  return [...nursery.kinds.values()].flatMap(kind =>
    kind.ways.flatMap(way => {
      const protocol = nursery.protocols.get(way.protocol)
      return (protocol?.steps ?? []).map((step, index) => {
        const { used } = book.survival(protocol!, index, { kind: kind.id, startMonth: month })
        const sum = seen.get(`${kind.id}|${way.protocol}|${step.id}`)
        return {
          protocol: way.protocol,
          protocolName: protocol!.name,
          method: protocol!.method,
          step: step.id,
          stepName: step.name,
          sign: step.sign,
          kind: kind.id,
          kindName: kind.name,
          mean: used.mean,
          low: used.low,
          high: used.high,
          from: used.from,
          setBy: latestSet(sets, way.protocol, step.id, kind.id)?.entry ?? null,
          basis: used.basis,
          sources: [...used.sources],
          batches: used.batches,
          entered: sum?.entered ?? 0,
          survived: sum?.survived ?? 0,
        }
      })
    }),
  )
}
