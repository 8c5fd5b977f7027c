import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { EntryList } from '../../parts/entry-list.tsx'
import { AddPhoto } from './add-photo.tsx'
import type { Asking } from './asking.ts'

/** All that was said of a batch; or only what stands behind one of its numbers. */
export function BatchEntries({
  view,
  asking,
  onAll,
}: {
  readonly view: BatchView
  readonly asking: Asking | null
  readonly onAll: () => void
}) {
  const { t } = useTranslation()
  const behind = asking === null ? null : new Set<string>(view.behind[asking.number])
  const shown = behind === null ? view.entries : view.entries.filter(({ id }) => behind.has(id))
  return (
    <section className="sheet" id="entries" aria-live="polite">
      <div className="row">
        <h2>{asking === null ? t('batch.entries') : t('batch.behind', { says: asking.says })}</h2>
        {asking !== null && (
          <Button className="quiet" onPress={onAll}>
            {t('batch.allEntries')}
          </Button>
        )}
        <AddPhoto batch={view.row.id} name={view.row.name} />
      </div>
      <EntryList entries={shown} />
    </section>
  )
}
