import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { EntryId } from '../../trade/index.ts'
import { look } from '../data/queries.ts'
import { Asked } from './asked.tsx'
import { Drill } from './drill.tsx'
import { EntryList } from './entry-list.tsx'
import { Leaf } from './leaf.tsx'

/** A number, in words, that lays the entries behind it over the page when it is asked. */
export function Behind({ says, entries }: { readonly says: string; readonly entries: readonly EntryId[] }) {
  const [isOpen, setOpen] = useState(false)
  if (entries.length === 0) return says
  return (
    <>
      <Drill says={says} onAsk={() => setOpen(true)} />
      {isOpen && <EntriesBehind says={says} entries={entries} onClose={() => setOpen(false)} />}
    </>
  )
}

function EntriesBehind({
  says,
  entries,
  onClose,
}: {
  readonly says: string
  readonly entries: readonly EntryId[]
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const shown = useQuery(look.entries(entries))
  return (
    <Leaf title={t('batch.behind', { says })} isOpen onClose={onClose}>
      <Asked query={shown} what={says}>
        {list => <EntryList entries={list} />}
      </Asked>
    </Leaf>
  )
}
