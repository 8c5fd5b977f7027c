import { Link } from '@tanstack/react-router'
import { memo } from 'react'
import { useTranslation } from 'react-i18next'
import type { BatchRow } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'

/** One batch in a list: what it is, how far it has come, and what is left of it as a bar. It leads to the batch. */
export const BatchLine = memo(function BatchLine({ row }: { readonly row: BatchRow }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const names = useNames()
  const left = row.standing + row.finished
  return (
    <Link to="/batches/$batch" params={{ batch: row.id }} className="batch-line">
      <Mark mark={row.mark} size={32} />
      <span className="batch-line-what">
        <span>
          <b>{row.name}</b> {row.kindName}
          {row.onHold && <span className="tag warn">{t('common.onHold')}</span>}
          {row.queries > 0 && <span className="tag warn">{t('batch.queries')}</span>}
        </span>
        <span className="soft small">
          {term(row.stage)}
          {row.benches.length > 0 && ` · ${row.benches.map(names.bench).join(', ')}`} ·{' '}
          {t('settings.batches.row', { number: format.number(row.number), day: format.day(row.startedOn) })} ·{' '}
          {row.countedOn === null
            ? t('settings.batches.uncounted')
            : t('settings.batches.counted', { day: format.day(row.countedOn) })}
        </span>
      </span>
      <span className="batch-line-left">
        <b>{format.number(left)}</b>
        <span className="left-bar" aria-hidden="true">
          <span
            style={{ inlineSize: `${row.number === 0 ? 0 : Math.min(100, (100 * left) / row.number)}%` }}
          />
        </span>
      </span>
    </Link>
  )
})
