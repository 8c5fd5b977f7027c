import { useQuery } from '@tanstack/react-query'
import { useTranslation } from 'react-i18next'
import type { EntryId } from '../../trade/index.ts'
import { look } from '../data/queries.ts'
import { Asked } from './asked.tsx'
import { Drill } from './drill.tsx'
import { EntryList } from './entry-list.tsx'
import { Leaf } from './leaf.tsx'
import { openedOf, useOpened } from './use-opened.ts'

/** A number, in words, that lays the entries behind it over the page when it is asked, by its name in the page's address. */
export function Behind({
  name,
  says,
  entries,
}: {
  readonly name: string
  readonly says: string
  readonly entries: readonly EntryId[]
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
  readonly entries: readonly EntryId[]
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const shown = useQuery(look.entries(entries))
  return (
    <Leaf title={t('batch.behind', { says })} isOpen onClose={onClose}>
      <Asked query={shown} what={says}>
        {list => <EntryList entries={list} under={name} />}
      </Asked>
    </Leaf>
  )
}
