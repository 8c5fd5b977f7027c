import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { uuidv7 } from 'uuidv7'
import type { BatchView } from '../../../api/index.ts'
import type { BatchId } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { say } from '../../data/say.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { useFormat } from '../../text/use-format.tsx'
import {
  ASKS,
  bodiesOfDeed,
  type DeedDraft,
  type DeedKind,
  isStopped,
  nameForPart,
  standingBySteps,
} from './batch-deed.ts'
import { DeedField } from './deed-field.tsx'

/** Says one thing about a batch: only what it needs is asked, and the day if it was not today. */
export function DeedLeaf({
  view,
  kind: deed,
  onClose,
}: {
  readonly view: BatchView
  readonly kind: DeedKind
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const names = useNames()
  const format = useFormat()
  const done = useDone()
  const { data: batches } = useQuery(look.batchesAlive())
  const { row } = view
  const today = names.nursery?.today ?? deviceDay()
  const [on, setOn] = useState(today)
  const [draft, setDraft] = useState<DeedDraft>(() => firstDraft(view, deed))
  const [isShort, setShort] = useState(false)
  const suggested = nameForPart(row.name, new Set(batches?.map(({ name }) => name)))
  const full = draft.name === '' ? { ...draft, name: suggested } : draft
  const isDay = on !== '' && on <= today
  const made = () => (isDay ? bodiesOfDeed(view, deed, full, () => uuidv7() as BatchId, format.units) : null)
  const stopped = isStopped(view, deed, draft.step)

  const keep = async () => {
    if (stopped) return
    const bodies = made()
    if (bodies === null) return setShort(true)
    const said = await say(bodies, on)
    if (!said.kept) return
    done.tell(t(`batch.deed.kept.${deed}`, { name: row.name, number: draft.number }), said)
    onClose()
  }

  return (
    <Leaf
      title={`${t('batch.title', { name: row.name })}: ${t(`batch.does.${deed}`)}`}
      isOpen
      onClose={onClose}
    >
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        {ASKS[deed].map(field => (
          <DeedField
            key={field}
            field={field}
            view={view}
            deed={deed}
            draft={full}
            onChange={change => setDraft({ ...draft, ...change })}
          />
        ))}
        <Field type="date" label={t('batch.deed.on')} value={on} onChange={setOn} />
        {isShort && made() === null && (
          <p className="warn" role="alert">
            {t(isDay ? 'batch.deed.need' : 'batch.deed.needDay')}
          </p>
        )}
        {stopped && (
          <p className="warn strong">{t(deed === 'send' ? 'batch.heldSend' : 'batch.heldFinish')}</p>
        )}
        <Button type="submit" className="deed large" isDisabled={stopped}>
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}

/** Most deeds are done to all plants of the step in which most of them are first; a loss is of a few. */
const firstDraft = (view: BatchView, deed: DeedKind): DeedDraft => {
  const first = standingBySteps(view, deed)[0]
  const number = deed === 'send' ? view.row.finished : first?.number
  const isSome = deed === 'lost' || deed === 'split' || deed === 'back'
  return {
    step: first?.step ?? null,
    number: number === undefined || isSome ? '' : String(number),
    bench: '',
    words: '',
    name: '',
    into: null,
    litres: '',
    calipers: '',
    grades: ['1', '2', '3'].map(grade => ({ grade, number: '' })),
    order: '',
    kind: null,
    wood: null,
    sticks: '',
    cultivar: view.candidates[0]?.cultivar ?? '',
  }
}
