import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { ShownEntry } from '../../api/index.ts'
import { client } from '../data/client.ts'
import { deviceDay } from '../data/today.ts'
import { useNames } from '../data/use-names.tsx'
import { daysBetween } from '../text/format.ts'
import { useFormat } from '../text/use-format.tsx'
import './entry-list.css'
import { useTell } from '../text/use-tell.ts'
import { EntryForm } from './entry-form.tsx'
import { Field } from './field.tsx'

/** Days from the one that it speaks of to the one on which it was entered. */
const daysLate = ({ on, made }: ShownEntry): number => daysBetween(on, deviceDay(new Date(made)))

/** What was said of a thing, newest first. A wrong one is struck: it stays to be seen, and counts no more. */
export function EntryList({ entries }: { readonly entries: readonly ShownEntry[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const tell = useTell()
  const [wrong, setWrong] = useState<ShownEntry | null>(null)
  return (
    <>
      <ul className="entries">
        {[...entries].reverse().map(entry => (
          <li key={entry.id} data-struck={entry.struck !== null}>
            <div>
              <p>{entry.struck ? <s>{tell(entry.says)}</s> : tell(entry.says)}</p>
              {entry.picture !== null && (
                <a href={client.downloads.picture(entry.picture)} target="_blank" rel="noreferrer">
                  <img
                    className="photo"
                    src={client.downloads.picture(entry.picture)}
                    alt={tell(entry.says)}
                    loading="lazy"
                  />
                </a>
              )}
              <p className="soft small">
                {t('batch.entryMeta', {
                  day: format.fullDay(entry.on),
                  time: entry.at === null ? '' : ` ${entry.at}`,
                  by: entry.by === null ? t('batch.nobody') : names.person(entry.by),
                })}
                {daysLate(entry) > 0 && (
                  <span className="entry-late">
                    {' · '}
                    {t('batch.late', {
                      count: daysLate(entry),
                      days: format.number(daysLate(entry)),
                      day: format.fullDay(deviceDay(new Date(entry.made))),
                    })}
                  </span>
                )}
              </p>
              {entry.struck !== null && (
                <p className="small entry-struck">
                  {t('batch.struck', {
                    day: format.fullDay(entry.struck.on),
                    by: entry.struck.by === null ? t('batch.nobody') : names.person(entry.struck.by),
                    why: entry.struck.why,
                  })}
                </p>
              )}
            </div>
            {entry.struck === null && (
              <Button
                className="quiet"
                aria-label={`${t('batch.strike')}: ${tell(entry.says)}`}
                onPress={() => setWrong(entry)}
              >
                {t('batch.strike')}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {wrong !== null && <StrikeOne entry={wrong} onClose={() => setWrong(null)} />}
    </>
  )
}

/** Strikes one entry, with the reason. */
export function StrikeOne({
  entry: { id, says },
  onClose,
}: {
  readonly entry: Pick<ShownEntry, 'id' | 'says'>
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
      <Field label={t('batch.strikeWhy')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
