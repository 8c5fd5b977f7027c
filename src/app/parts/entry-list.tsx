import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ShownEntry } from '../../api/index.ts'
import type { Phrase } from '../../trade/index.ts'
import { useTell } from '../text/use-tell.ts'
import './entry-list.css'
import { EntryForm } from './entry-form.tsx'
import { EntryLine } from './entry-line.tsx'
import { Field } from './field.tsx'
import { openedOf, useOpened } from './use-opened.ts'

/** What was said of a thing, newest first. A wrong one is struck: it stays to be seen, and counts no more. */
export function EntryList({
  entries,
  under = '',
}: {
  readonly entries: readonly ShownEntry[]
  /** What lies open already and holds the list, by its name in the page's address. */
  readonly under?: string
}) {
  const [opened, open] = useOpened()
  const strike = `${under} strike`.trim()
  const wrong = entries.find(({ id }) => id === openedOf(opened, strike))
  return (
    <>
      <ul className="entries">
        {[...entries].reverse().map(entry => (
          <li key={entry.id}>
            <EntryLine entry={entry} onStrike={() => open(`${strike} ${entry.id}`)} />
          </li>
        ))}
      </ul>
      {wrong !== undefined && <StrikeOne entry={wrong} onClose={() => open(null)} />}
    </>
  )
}

/** Strikes one entry, with the reason. */
export function StrikeOne({
  entry: { id, says, of = null },
  onClose,
}: {
  /** With what it speaks of, where its words alone do not tell it. */
  readonly entry: Pick<ShownEntry, 'id' | 'says'> & { readonly of?: Phrase | null }
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const tell = useTell()
  const [why, setWhy] = useState('')
  return (
    <EntryForm
      title={t('batch.strikeTitle')}
      bodies={why.trim() === '' ? null : [{ kind: 'struck/1', entry: id, why: why.trim() }]}
      need={t('holds.need')}
      told={t('batch.struckDone', { says: tell(says) })}
      keep={t('batch.strike')}
      onClose={onClose}
    >
      <p>{tell(says)}</p>
      {of !== null && <p className="soft small">{tell(of)}</p>}
      <Field label={t('batch.strikeWhy')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
