import type { Figure, Protocol } from '../../../trade/index.ts'

const STEM_NAMES = /^(stock stem|stock thickness|stem at)/

/** What the nursery's own protocols say of a measure: from the least to the greatest; null where none says anything. */
export function ownMeasure(protocols: readonly Protocol[], name: string): Figure | null {
  const spans = protocols.flatMap((protocol): (readonly [number, number])[] => {
    if (STEM_NAMES.test(name))
      return protocol.takes.flatMap(taking =>
        taking.what === 'rootstock' ? [[taking.caliperMm.min, taking.caliperMm.max] as const] : [],
      )
    return (protocol.settings ?? [])
      .filter(setting => setting.name === name)
      .map(({ unit, figure: { low, high } }) => {
        const factor = unit === 'share' ? 100 : 1
        return [factor * low, factor * high] as const
      })
  })
  if (spans.length === 0) return null
  const low = Math.min(...spans.map(([least]) => least))
  const high = Math.max(...spans.map(([, greatest]) => greatest))
  return { low, typical: (low + high) / 2, high, basis: 'set by the nursery', sources: [] }
}
