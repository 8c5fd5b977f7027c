import { getRouteApi } from '@tanstack/react-router'
import { useMemo } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { JournalEntry } from '../../../api/index.ts'
import { useOutbox } from '../../data/outbox/use-outbox.ts'
import { struckHere } from '../../data/struck-here.ts'
import { deviceDay } from '../../data/today.ts'
import { Asked } from '../../parts/asked.tsx'
import { StrikeOne } from '../../parts/entry-list.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { VirtualList } from '../../parts/virtual-list.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './journal.css'
import { JournalLine } from './journal-line.tsx'
import { useJournal } from './use-journal.ts'

const route = getRouteApi('/journal')

type Row =
  | { readonly is: 'day'; readonly key: string; readonly day: string }
  | { readonly is: 'entry'; readonly key: string; readonly entry: JournalEntry }

/** By the day on which they were said. */
const byDay = (entries: readonly JournalEntry[]): readonly Row[] => {
  let last = ''
  return entries.flatMap((entry): Row[] => {
    const day = deviceDay(new Date(entry.made))
    const row: Row = { is: 'entry', key: entry.id, entry }
    if (day === last) return [row]
    last = day
    return [{ is: 'day', key: `${day} ${entry.id}`, day }, row]
  })
}

/** All that was said in the nursery, the newest first: what is wrong is struck here, however old it is. */
export function JournalScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const { find = '' } = route.useSearch()
  const navigate = route.useNavigate()
  const { query, end } = useJournal(find)
  const { lately, waiting } = useOutbox()
  const [opened, open] = useOpened()
  const rows = useMemo(() => {
    const struck = struckHere([...lately, ...waiting.map(({ entry }) => entry)])
    const entries = query.data?.pages.flatMap(page => page.entries) ?? []
    return byDay(entries.map(entry => ({ ...entry, struck: entry.struck ?? struck.get(entry.id) ?? null })))
  }, [query.data, lately, waiting])
  const wrong = query.data?.pages
    .flatMap(page => page.entries)
    .find(({ id }) => id === openedOf(opened, 'strike'))
  const backTo = query.data?.pages.at(-1)?.backTo
  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('journal.title')}</h1>
          <p className="soft">{t('journal.says')}</p>
        </div>
        <div className="row">
          <FindField
            inAddress={find}
            hint={t('journal.findHint')}
            onRest={find => void navigate({ search: find === undefined ? {} : { find }, replace: true })}
          />
        </div>
      </div>
      <Asked query={query} what={t('journal.title')}>
        {() => (
          <>
            {rows.length > 0 && (
              <VirtualList
                items={rows}
                label={t('journal.title')}
                rowHeight={({ is }) => (is === 'day' ? 48 : 84)}
                keyOf={({ key }) => key}
              >
                {row =>
                  row.is === 'day' ? (
                    <h2 className="journal-day">
                      {format.weekday(row.day)} <span className="soft">{format.fullDay(row.day)}</span>
                    </h2>
                  ) : (
                    <JournalLine entry={row.entry} onStrike={() => open(`strike ${row.entry.id}`)} />
                  )
                }
              </VirtualList>
            )}
            {rows.length === 0 && !query.hasNextPage && (
              <p className="soft">{t(find === '' ? 'common.nothingYet' : 'journal.none')}</p>
            )}
            <div className="row" ref={end}>
              {query.hasNextPage && (
                <>
                  <p className="soft" role="status">
                    {backTo != null &&
                      t(query.isFetchingNextPage ? 'journal.looking' : 'journal.lookedBack', {
                        day: format.fullDay(backTo),
                      })}
                  </p>
                  <Button
                    className="plain"
                    isDisabled={query.isFetchingNextPage}
                    onPress={() => void query.fetchNextPage()}
                  >
                    {t('journal.further')}
                  </Button>
                </>
              )}
            </div>
          </>
        )}
      </Asked>
      {wrong !== undefined && <StrikeOne entry={wrong} onClose={() => open(null)} />}
    </div>
  )
}
