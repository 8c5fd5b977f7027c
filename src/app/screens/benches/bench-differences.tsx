import { useNavigate } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BenchStand } from '../../../api/index.ts'
import { painted } from '../../data/painted.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import {
  type BenchCountDraft,
  bodiesOfCount,
  CAUSES_FEWER,
  CAUSES_MORE,
  type Cause,
  countedIn,
  emptyCount,
  keyOf,
  type LineSaid,
  linesOf,
} from './bench-count-draft.ts'

/** The differences, shown before anything is written: each with its cause, all written at once. */
export function BenchDifferences({
  stand,
  draft,
  onDraft,
  onBack,
}: {
  readonly stand: BenchStand
  readonly draft: BenchCountDraft
  readonly onDraft: (draft: BenchCountDraft) => void
  readonly onBack: () => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const names = useNames()
  const done = useDone()
  const navigate = useNavigate()
  const [isShort, setShort] = useState(false)
  const counted = countedIn(stand, draft)
  const differences = counted.filter(({ line, seen }) => seen !== line.number)
  const even = counted.length - differences.length
  const left = linesOf(stand, draft).length - counted.length
  const bodies = bodiesOfCount(stand.bench, counted, cause => t(`benches.counting.causes.${cause}`))
  const set = (key: string, said: LineSaid) => onDraft({ ...draft, said: { ...draft.said, [key]: said } })

  const keep = async () => {
    if (bodies === null) return setShort(true)
    const said = await say(bodies)
    if (!said.kept) return
    onDraft(emptyCount)
    done.tell(
      differences.length === 0
        ? t('benches.counting.keptEven', { name: stand.name })
        : t('benches.counting.kept', { name: stand.name, count: differences.length }),
      said,
    )
    await painted()
    void navigate({ to: '/benches', search: { bench: stand.bench } })
  }

  return (
    <form
      className="stack"
      onSubmit={event => {
        event.preventDefault()
        void keep()
      }}
    >
      <section className="sheet stack">
        <div>
          <h2>{t('benches.counting.differences')}</h2>
          <p className="soft">
            {[
              t('benches.counting.even', { count: even, shown: format.number(even) }),
              left > 0 && t('benches.counting.left', { count: left, shown: format.number(left) }),
            ]
              .filter(Boolean)
              .join(' ')}
          </p>
        </div>
        <ul className="bench-differences">
          {differences.map(({ line, seen, said }) => {
            const key = keyOf(line)
            const isFewer = seen < line.number
            const by = Math.abs(seen - line.number)
            const causes: readonly (Cause | '')[] = ['', ...(isFewer ? CAUSES_FEWER : CAUSES_MORE)]
            return (
              <li key={key}>
                <p className="strong">
                  {t(isFewer ? 'benches.counting.fewer' : 'benches.counting.over', {
                    batch: line.name,
                    step: term(line.stepName),
                    seen: format.number(seen),
                    count: by,
                    shown: format.number(by),
                  })}
                </p>
                <div className="form-grid">
                  <Pick
                    label={t('benches.counting.cause')}
                    value={said.cause}
                    options={causes.map(id => ({ id, name: t(`benches.counting.causes.${id}`) }))}
                    onPick={cause => set(key, { ...said, cause })}
                  />
                  {said.cause === 'words' && (
                    <Field
                      label={t('benches.counting.words')}
                      value={said.words}
                      onChange={words => set(key, { ...said, words })}
                    />
                  )}
                  {said.cause === 'moved' && (
                    <Pick
                      label={t('benches.counting.onto')}
                      value={said.onto}
                      options={[
                        { id: '', name: t('benches.counting.causes.') },
                        ...(names.nursery?.benches ?? [])
                          .filter(({ id }) => id !== stand.bench)
                          .map(({ id, name }) => ({ id: id as string, name })),
                      ]}
                      onPick={onto => set(key, { ...said, onto })}
                    />
                  )}
                </div>
              </li>
            )
          })}
        </ul>
      </section>
      {isShort && bodies === null && (
        <p className="warn" role="alert">
          {t('benches.counting.need')}
        </p>
      )}
      <div className="row">
        <Button type="submit" className="deed large">
          {t('benches.counting.accept')}
        </Button>
        <Button className="plain large" onPress={onBack}>
          {t('benches.counting.back')}
        </Button>
      </div>
    </form>
  )
}
