import { useTranslation } from 'react-i18next'
import type { RateRow } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { PointsPicture, wholeName } from './points-picture.tsx'

const SIGN = { records: 'own', facts: 'assumed', 'set by the nursery': 'set' } as const

/** Rates as points on the range that holds nine of ten next batches. */
export function RatePicture({
  title,
  says,
  rows,
  nameOf,
  underOf,
  onChoose,
}: {
  readonly title: string
  readonly says: string | undefined
  readonly rows: readonly RateRow[]
  readonly nameOf: (row: RateRow) => string
  /** What several rows stand under. */
  readonly underOf: (row: RateRow) => string | undefined
  readonly onChoose: (row: RateRow) => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const sourceOf = ({ from, batches, survived, entered, basis }: RateRow): string =>
    from === 'records'
      ? t('rates.batches', {
          count: batches,
          shown: format.number(batches),
          survived: format.number(survived),
          entered: format.number(entered),
        })
      : t(from === 'facts' ? 'rates.assumed' : 'rates.set', { basis: term(basis) })

  const keyOf = ({ kind, protocol, step }: RateRow): string => `${kind} ${protocol} ${step}`

  return (
    <PointsPicture
      title={title}
      says={says}
      lanes={rows.map(row => ({
        key: keyOf(row),
        name: nameOf(row),
        under: underOf(row),
        share: row.mean,
        low: row.low,
        high: row.high,
        sign: SIGN[row.from],
        says: sourceOf(row),
      }))}
      onChoose={key => {
        const row = rows.find(one => keyOf(one) === key)
        if (row !== undefined) onChoose(row)
      }}
      numbers={() => ({
        columns: [
          t('rates.column.kind'),
          `${t('rates.column.rate')} %`,
          `${t('rates.column.low')} %`,
          `${t('rates.column.high')} %`,
          t('rates.column.entered'),
          t('rates.column.survived'),
          t('rates.column.source'),
        ],
        rows: rows.map(row => [
          wholeName({ name: nameOf(row), under: underOf(row) }),
          Math.round(1000 * row.mean) / 10,
          Math.round(1000 * row.low) / 10,
          Math.round(1000 * row.high) / 10,
          row.entered,
          row.survived,
          [sourceOf(row), ...row.sources].join('; '),
        ]),
      })}
    />
  )
}
