import type { ReactNode } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { ShownEntry } from '../../api/index.ts'
import { client } from '../data/client.ts'
import { deviceDay } from '../data/today.ts'
import { useNames } from '../data/use-names.tsx'
import { daysBetween } from '../text/format.ts'
import { useFormat } from '../text/use-format.tsx'
import { useTell } from '../text/use-tell.ts'

/** Days from the one that it speaks of to the one on which it was entered. */
const daysLate = ({ on, made }: ShownEntry): number => daysBetween(on, deviceDay(new Date(made)))

/** One entry as it was said: by whom, for what day; struck, where it counts no more. */
export function EntryLine({
  entry,
  onStrike,
  device,
  children,
}: {
  readonly entry: ShownEntry
  readonly onStrike: () => void
  /** On which it was said, where entries of several stand together. */
  readonly device?: string
  /** What else is said of it, below its words. */
  readonly children?: ReactNode
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const tell = useTell()
  return (
    <div className="entry" data-struck={entry.struck !== null}>
      <div>
        <p>{entry.struck ? <s>{tell(entry.says)}</s> : tell(entry.says)}</p>
        {children}
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
          {device !== undefined && device !== '' && ` · ${device}`}
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
        <Button className="quiet" aria-label={`${t('batch.strike')}: ${tell(entry.says)}`} onPress={onStrike}>
          {t('batch.strike')}
        </Button>
      )}
    </div>
  )
}
