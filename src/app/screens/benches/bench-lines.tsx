import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BenchStand } from '../../../api/index.ts'
import { Behind } from '../../parts/behind.tsx'
import { Field } from '../../parts/field.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { AddBatch } from './add-batch.tsx'
import {
  type BenchCountDraft,
  countedIn,
  keyOf,
  type LineSaid,
  linesOf,
  nothingSaid,
  seenIn,
} from './bench-count-draft.ts'

/** What the record has on the bench, line by line, with a field for what is seen. */
export function BenchLines({
  stand,
  draft,
  onDraft,
  onLook,
}: {
  readonly stand: BenchStand
  readonly draft: BenchCountDraft
  readonly onDraft: (draft: BenchCountDraft) => void
  readonly onLook: () => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const [wrong, setWrong] = useState<string | null>(null)
  const lines = linesOf(stand, draft)
  const behind = new Map(stand.lines.map(line => [keyOf(line), line.behind]))
  const saidOf = (key: string): LineSaid => draft.said[key] ?? nothingSaid
  const setSeen = (key: string, seen: string) =>
    onDraft({ ...draft, said: { ...draft.said, [key]: { ...saidOf(key), seen } } })
  const isNoNumber = (key: string) => seenIn(saidOf(key).seen) === undefined

  const look = () => {
    if (lines.some(line => isNoNumber(keyOf(line)))) return setWrong(t('benches.counting.number'))
    if (countedIn(stand, draft).length === 0) return setWrong(t('benches.counting.none'))
    onLook()
  }
  return (
    <form
      className="stack"
      onSubmit={event => {
        event.preventDefault()
        look()
      }}
    >
      <ul className="bench-lines sheet">
        {lines.map(line => {
          const key = keyOf(line)
          return (
            <li key={key}>
              <div>
                <p className="strong">{t('batch.title', { name: line.name })}</p>
                <p className="small">
                  <Behind
                    name={key}
                    says={t('benches.counting.line', {
                      kind: line.kindName,
                      step: term(line.stepName),
                      number: format.number(line.number),
                    })}
                    entries={behind.get(key) ?? []}
                  />
                </p>
              </div>
              <Button className="quiet" onPress={() => setSeen(key, String(line.number))}>
                {t('benches.counting.same')}
              </Button>
              <Field
                label={
                  <>
                    {t('benches.counting.counted')}{' '}
                    <span className="unseen">
                      {t('benches.counting.ofBatch', { batch: line.name, step: term(line.stepName) })}
                    </span>
                  </>
                }
                inputMode="numeric"
                value={saidOf(key).seen}
                onChange={seen => setSeen(key, seen)}
                wrong={isNoNumber(key) ? t('benches.counting.number') : undefined}
              />
            </li>
          )
        })}
      </ul>
      <AddBatch
        onAdd={(line, seen) =>
          onDraft({
            added: [...draft.added.filter(one => keyOf(one) !== keyOf(line)), line],
            said: { ...draft.said, [keyOf(line)]: { ...nothingSaid, seen } },
          })
        }
      />
      {wrong !== null && (
        <p className="warn" role="alert">
          {wrong}
        </p>
      )}
      <Button type="submit" className="deed large">
        {t('benches.counting.look')}
      </Button>
    </form>
  )
}
