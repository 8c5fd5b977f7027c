import { useQuery } from '@tanstack/react-query'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import type { StepId } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { Field } from '../../parts/field.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import {
  type Field as Asked,
  type Asks,
  type DeedDraft,
  readCalipers,
  standingBySteps,
} from './batch-deed.ts'
import { IntoField } from './into-field.tsx'
import { WoodField } from './wood-field.tsx'

/** One thing that a deed asks. */
export function DeedField({ field, ...asks }: Asks & { readonly field: Asked }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { view, draft, onChange } = asks
  switch (field) {
    case 'step':
      return <StepField {...asks} />
    case 'number':
      return (
        <Field
          label={t('batch.deed.number')}
          inputMode="numeric"
          value={draft.number}
          onChange={number => onChange({ number })}
        />
      )
    case 'bench':
      return <BenchField {...asks} />
    case 'words':
      return <WordsField {...asks} />
    case 'name':
      return <Field label={t('batch.deed.name')} value={draft.name} onChange={name => onChange({ name })} />
    case 'into':
      return <IntoField row={view.row} onPick={into => onChange({ into })} />
    case 'litres':
      return (
        <Field
          label={t('batch.deed.litres', { unit: format.shown('litres').unit })}
          inputMode="decimal"
          value={draft.litres}
          onChange={litres => onChange({ litres })}
        />
      )
    case 'calipers':
      return <CalipersField {...asks} />
    case 'grades':
      return <GradesField {...asks} />
    case 'order':
      return <OrderField {...asks} />
    case 'wood':
      return <WoodField {...asks} />
    case 'cultivar':
      return (
        <Pick
          label={t('batch.deed.cultivar')}
          value={draft.cultivar}
          options={view.candidates.map(({ cultivar, name }) => ({ id: cultivar as string, name }))}
          onPick={cultivar => onChange({ cultivar })}
        />
      )
  }
}

const nextStep = (view: BatchView, step: StepId | null) =>
  view.steps[view.steps.findIndex(one => one.step === step) + 1]

function StepField({ view, deed, draft, onChange }: Asks) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const standing = standingBySteps(view, deed)
  const next = nextStep(view, draft.step)
  const isAll = deed !== 'lost' && deed !== 'split'
  const nameOf = ({ name, number }: (typeof standing)[number]): string =>
    `${name === null ? t('trade.finished') : term(name)} (${format.number(number)})`
  return (
    <>
      {standing.length === 1 ? (
        <p>{t('batch.deed.onlyStep', { step: nameOf(standing[0]!) })}</p>
      ) : (
        <Pick
          label={t('batch.deed.step')}
          value={draft.step ?? ''}
          options={standing.map(one => ({ id: one.step as string, name: nameOf(one) }))}
          onPick={id => {
            const picked = standing.find(({ step }) => step === id)!
            onChange({ step: picked.step, ...(isAll ? { number: String(picked.number) } : {}) })
          }}
        />
      )}
      {deed === 'advance' && (
        <p>{next === undefined ? t('batch.deed.finish') : t('batch.deed.next', { step: term(next.name) })}</p>
      )}
    </>
  )
}

/** Benches of the place where the step is; a finished plant stands where it likes. Past the last step: the grade. */
function BenchField({ view, deed, draft, onChange }: Asks) {
  const { t } = useTranslation()
  const names = useNames()
  const next = nextStep(view, draft.step)
  if (deed === 'advance' && next === undefined)
    return <Field label={t('batch.deed.grade')} value={draft.words} onChange={words => onChange({ words })} />
  const place = deed === 'advance' ? next?.place : view.steps.find(({ step }) => step === draft.step)?.place
  const benches = (names.nursery?.benches ?? []).filter(bench => place === undefined || bench.place === place)
  return (
    <Pick
      label={t('batch.deed.bench')}
      value={draft.bench}
      options={[
        { id: '', name: t('batch.deed.sameBench') },
        ...benches.map(({ id, name }) => ({ id: id as string, name })),
      ]}
      onPick={bench => onChange({ bench })}
    />
  )
}

const WORDS = {
  lost: 'cause',
  split: 'whySplit',
  send: 'to',
  back: 'whyBack',
  settle: 'how',
  hold: 'why',
  note: 'note',
} as const

function WordsField({ deed, draft, onChange }: Asks) {
  const { t } = useTranslation()
  // An order says who it is for.
  if (deed === 'send' && draft.order !== '') return null
  return (
    <Field
      label={t(`batch.deed.${WORDS[deed as keyof typeof WORDS]}`)}
      {...(deed === 'lost' ? { placeholder: t('batch.deed.causeHint') } : {})}
      value={draft.words}
      onChange={words => onChange({ words })}
    />
  )
}

const EXAMPLE_MM = [6.5, 7, 8.2]

function CalipersField({ draft, onChange }: Asks) {
  const { t } = useTranslation()
  const format = useFormat()
  const { unit, to } = format.shown('mm')
  const stems = readCalipers(draft.calipers)
  return (
    <div>
      <Field
        label={t('batch.deed.calipers', { unit })}
        placeholder={t('batch.deed.calipersHint', {
          example: EXAMPLE_MM.map(mm => format.typed(Number(to(mm).toPrecision(2)))).join(' '),
        })}
        inputMode="text"
        value={draft.calipers}
        onChange={calipers => onChange({ calipers })}
      />
      {stems !== null && (
        <p className="small" aria-live="polite">
          {t('batch.deed.stems', {
            count: stems.length,
            shown: format.number(stems.length),
            mean: format.typed(
              Number((stems.reduce((sum, size) => sum + size, 0) / stems.length).toPrecision(3)),
            ),
            unit,
          })}
        </p>
      )}
    </div>
  )
}

function GradesField({ draft, onChange }: Asks) {
  const { t } = useTranslation()
  const change = (at: number, said: Partial<DeedDraft['grades'][number]>) =>
    onChange({ grades: draft.grades.map((line, i) => (i === at ? { ...line, ...said } : line)) })
  return (
    <fieldset className="stack">
      <legend className="field-label">{t('batch.deed.grades')}</legend>
      {draft.grades.map(({ grade, number }, at) => (
        // Lines are neither added nor moved.
        // biome-ignore lint/suspicious/noArrayIndexKey: the place is what a line is
        <div key={at} className="form-grid">
          <Field
            label={t('batch.deed.gradeName')}
            value={grade}
            onChange={said => change(at, { grade: said })}
          />
          <Field
            label={t('batch.deed.gradeNumber', { grade })}
            inputMode="numeric"
            value={number}
            onChange={said => change(at, { number: said })}
          />
        </div>
      ))}
    </fieldset>
  )
}

/** Orders for this kind that are not filled; of what came back, those that it went out for. */
function OrderField({ view, deed, draft, onChange }: Asks) {
  const { t } = useTranslation()
  const format = useFormat()
  const { data: orders } = useQuery(look.orders())
  const wants = (orders ?? []).filter(({ order, cancelled, dispatched }) =>
    deed === 'back'
      ? view.sent.some(sent => sent.order === order.id)
      : !cancelled &&
        dispatched < order.number &&
        (order.kind === view.row.kind || order.instead.some(({ kind }) => kind === view.row.kind)),
  )
  return (
    <Pick
      label={t('batch.deed.order')}
      value={draft.order}
      options={[
        { id: '', name: t('batch.deed.noOrder') },
        ...wants.map(({ order, dispatched }) => ({
          id: order.id as string,
          name: t('batch.deed.orderLine', {
            order: order.id,
            buyer: order.buyer || t('orders.own'),
            lacking: format.number(Math.max(0, order.number - dispatched)),
          }),
        })),
      ]}
      onPick={id => {
        const row = wants.find(({ order }) => order.id === id)
        const lacking = row ? row.order.number - row.dispatched : view.row.finished
        onChange({
          order: id,
          ...(deed === 'send' ? { number: String(Math.min(view.row.finished, lacking)) } : {}),
        })
      }}
    />
  )
}
