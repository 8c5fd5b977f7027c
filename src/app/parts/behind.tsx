import { useQuery } from '@tanstack/react-query'
import { useTranslation } from 'react-i18next'
import type { ShownEntry } from '../../api/index.ts'
import type { EntryId } from '../../trade/index.ts'
import { look } from '../data/queries.ts'
import { Asked } from './asked.tsx'
import { Drill } from './drill.tsx'
import { EntryList } from './entry-list.tsx'
import { Leaf } from './leaf.tsx'
import { openedOf, useOpened } from './use-opened.ts'

/** Entries by their ids, worded once they are asked for, or worded already. */
type Told = readonly EntryId[] | readonly ShownEntry[]
const isWorded = (entries: Told): entries is readonly ShownEntry[] => typeof entries[0] === 'object'

/** A number, in words, that lays the entries behind it over the page when it is asked, by its name in the page's address. */
export function Behind({
  name,
  says,
  entries,
}: {
  readonly name: string
  readonly says: string
  readonly entries: Told
}) {
  const [opened, open] = useOpened()
  const own = `behind ${name}`
  const isOpen = opened === own || openedOf(opened, `${own} strike`) !== null
  if (entries.length === 0) return says
  return (
    <>
      <Drill says={says} onAsk={() => open(own)} />
      {isOpen && <EntriesBehind name={own} says={says} entries={entries} onClose={() => open(null)} />}
    </>
  )
}

function EntriesBehind({
  name,
  says,
  entries,
  onClose,
}: {
  readonly name: string
  readonly says: string
  readonly entries: Told
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  return (
    <Leaf title={t('batch.behind', { says })} isOpen onClose={onClose}>
      {isWorded(entries) ? (
        <EntryList entries={entries} under={name} />
      ) : (
        <EntriesAsked name={name} says={says} entries={entries} />
      )}
    </Leaf>
  )
}

function EntriesAsked({
  name,
  says,
  entries,
}: {
  readonly name: string
  readonly says: string
  readonly entries: readonly EntryId[]
}) {
  const shown = useQuery(look.entries(entries))
  return (
    <Asked query={shown} what={says}>
      {list => <EntryList entries={list} under={name} />}
    </Asked>
  )
}
