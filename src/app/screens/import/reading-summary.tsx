import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Mapping, Reading } from '../../../api/index.ts'
import { Given } from '../../parts/given.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { ReadCells } from './read-cells.tsx'
import { ReadQuestions } from './read-questions.tsx'
import { SheetRead } from './sheet-read.tsx'
import { withSaid } from './with-said.ts'

/** All that was read: sheet by sheet, the questions, what is wrong, and what would be written. */
export function ReadingSummary({
  reading,
  isBusy,
  onSay,
  onAccept,
}: {
  readonly reading: Reading
  readonly isBusy: boolean
  readonly onSay: (mapping: Mapping) => void
  readonly onAccept: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const counted = (count: number) => ({ count, shown: format.number(count) })
  return (
    <>
      {reading.unread.map(({ file, wrong }) => (
        <p key={file} className="warn" role="alert">
          {t('imports.unread', { file, wrong })}
        </p>
      ))}
      <ReadQuestions
        questions={reading.questions}
        onAnswer={({ sheet, id }, answer) =>
          onSay(withSaid(reading.mapping, sheet, { answers: { [id]: answer } }))
        }
      />
      <section className="sheet stack">
        <h2>{t('imports.would')}</h2>
        {reading.would.length === 0 && <p className="soft">{t('imports.wouldNothing')}</p>}
        <ul className="would">
          {reading.would.map(({ kind, says, first }) => (
            <li key={kind}>
              <p>
                <Given says={says} />
              </p>
              <p className="soft small">{first.join(' · ')}</p>
            </li>
          ))}
        </ul>
        {reading.known > 0 && <p className="soft">{t('imports.known', counted(reading.known))}</p>}
        {reading.assumptions.length > 0 && (
          <details>
            <summary>{t('imports.assumed', counted(reading.assumptions.length))}</summary>
            <ul>
              {reading.assumptions.map(({ about, says }) => (
                <li key={`${about} ${says}`}>
                  <b>{about}</b> <Given says={says} />
                </li>
              ))}
            </ul>
          </details>
        )}
        <div className="row">
          <Button className="deed large" isDisabled={!reading.ready || isBusy} onPress={onAccept}>
            {t('imports.accept')}
          </Button>
          {!reading.ready && reading.questions.some(({ needed, answer }) => needed && answer === null) && (
            <p className="warn">{t('imports.notReady')}</p>
          )}
        </div>
      </section>
      <ReadCells cells={reading.cells} />
      <section className="stack" aria-label={t('imports.sheets')}>
        <h2>{t('imports.sheets')}</h2>
        {reading.sheets.map(sheet => (
          <SheetRead
            key={sheet.id}
            sheet={sheet}
            fields={sheet.kind === null ? [] : (reading.fields[sheet.kind] ?? [])}
            onSay={said => onSay(withSaid(reading.mapping, sheet.id, said))}
          />
        ))}
      </section>
    </>
  )
}
