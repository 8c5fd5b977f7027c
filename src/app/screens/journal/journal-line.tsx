import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { JournalEntry } from '../../../api/index.ts'
import { EntryLine } from '../../parts/entry-line.tsx'
import { useTell } from '../../text/use-tell.ts'

/** One entry among all others, with what it is about. */
export function JournalLine({
  entry,
  onStrike,
}: {
  readonly entry: JournalEntry
  readonly onStrike: () => void
}) {
  const { t } = useTranslation()
  const tell = useTell()
  return (
    <EntryLine entry={entry} onStrike={onStrike} device={entry.device}>
      {entry.of !== null && <p className="small">{tell(entry.of)}</p>}
      {entry.about.length > 0 && (
        <p className="small journal-about">
          {entry.about.map(({ what, id, name }) =>
            what === 'batch' ? (
              <Link key={id} to="/batches/$batch" params={{ batch: id }}>
                {t('journal.batch', { name })}
              </Link>
            ) : what === 'order' ? (
              <Link key={id} to="/orders" search={{ order: id }}>
                {t('journal.order', { name })}
              </Link>
            ) : (
              <Link key={id} to="/mothers" search={{ mother: id }}>
                {name}
              </Link>
            ),
          )}
        </p>
      )}
    </EntryLine>
  )
}
