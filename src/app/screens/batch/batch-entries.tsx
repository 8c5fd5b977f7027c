import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { EntryList } from '../../parts/entry-list.tsx'

/** The numbers of a batch that can be asked for the entries behind them. */
export const BEHIND = {
  begun: ['batch-started/1', 'split/1'],
  standing: [
    'batch-started/1',
    'counted/1',
    'bench-counted/1',
    'lost/1',
    'finished/1',
    'split/1',
    'joined/1',
  ],
  finished: ['finished/1', 'dispatched/1', 'returned/1'],
  lost: ['lost/1', 'counted/1', 'bench-counted/1'],
} as const satisfies Record<string, readonly string[]>
export type Behind = keyof typeof BEHIND

/** All that was said of a batch; or only what stands behind one of its numbers. */
export function BatchEntries({
  view,
  behind,
  onAll,
}: {
  readonly view: BatchView
  readonly behind: Behind | null
  readonly onAll: () => void
}) {
  const { t } = useTranslation()
  const kinds: readonly string[] = behind === null ? [] : BEHIND[behind]
  const shown = view.entries.filter(({ kind }) => behind === null || kinds.includes(kind))
  return (
    <section className="sheet" id="entries" aria-live="polite">
      <div className="row">
        <h2>{t(behind === null ? 'batch.entries' : `batch.behind.${behind}`)}</h2>
        {behind !== null && (
          <Button className="quiet" onPress={onAll}>
            {t('batch.allEntries')}
          </Button>
        )}
      </div>
      <EntryList entries={shown} />
    </section>
  )
}
