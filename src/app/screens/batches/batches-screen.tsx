import { useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { rowsOf } from '../../../api/index.ts'
import { client } from '../../data/client.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import { Choices } from '../../parts/choices.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { VirtualList } from '../../parts/virtual-list.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './batches.css'
import { useTerm } from '../../text/use-term.ts'
import { BatchLine } from './batch-line.tsx'
import { batchFinder } from './find-batches.ts'

const route = getRouteApi('/batches')
const STATES = ['alive', 'past', 'all'] as const
const MOST_PAST = 1000

/** Every batch, found in a keystroke: those alive are here already, past ones are asked for by the words. */
export function BatchesScreen() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const names = useNames()
  const { find: inAddress = '', state = 'alive' } = route.useSearch()
  const navigate = route.useNavigate()
  const [find, setFind] = useState(inAddress)
  const isAlive = state === 'alive'
  const batches = useQuery({
    queryKey: ['batches', state, ...(isAlive ? [] : [inAddress])],
    queryFn: () =>
      client.batches(isAlive ? { state, limit: 100_000 } : { state, find: inAddress, limit: MOST_PAST }),
    select: rowsOf,
    structuralSharing: false,
    placeholderData: was => was,
  })
  const found = useMemo(() => batchFinder(names.bench, term), [names, term])
  const shown = useMemo(
    () => found(batches.data ?? [], isAlive ? find : ''),
    [batches.data, find, isAlive, found],
  )

  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('settings.batches.title')}</h1>
          <p className="soft" role="status">
            {batches.data !== undefined &&
              t('settings.batches.says', {
                count: shown.length,
                shown: format.number(shown.length),
                plants: format.number(
                  shown.reduce((sum, { standing, finished }) => sum + standing + finished, 0),
                ),
              })}
          </p>
        </div>
        <div className="row batches-find">
          <FindField
            inAddress={inAddress}
            hint={t('settings.batches.findHint')}
            onFind={setFind}
            onRest={find => void navigate({ search: was => ({ ...was, find }), replace: true })}
          />
          <Choices
            label={t('settings.batches.state.label')}
            value={state}
            options={STATES.map(id => ({ id, name: t(`settings.batches.state.${id}`) }))}
            onPick={id => void navigate({ search: was => ({ ...was, state: id }), replace: true })}
          />
        </div>
      </div>
      <Asked query={batches} what={t('settings.batches.title')}>
        {() =>
          shown.length === 0 ? (
            <p className="soft">{t('settings.batches.empty')}</p>
          ) : (
            <VirtualList
              items={shown}
              label={t('settings.batches.title')}
              rowHeight={() => 68}
              keyOf={({ id }) => id}
            >
              {row => <BatchLine row={row} />}
            </VirtualList>
          )
        }
      </Asked>
      {!isAlive && shown.length === MOST_PAST && (
        <p className="soft">{t('settings.batches.most', { shown: format.number(MOST_PAST) })}</p>
      )}
    </div>
  )
}
