import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import type { StepId } from '../../../trade/index.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.ts'
import { bodyOfDeed, type DeedDraft, type DeedKind, NEEDS } from './batch-deed.ts'

/** Says one thing about a batch. */
export function DeedLeaf({
  view,
  kind,
  onClose,
}: {
  readonly view: BatchView
  readonly kind: DeedKind
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const done = useDone()
  const standingIn = (step: StepId) =>
    view.portions.filter(portion => portion.step === step).reduce((sum, { number }) => sum + number, 0)
  const steps = view.steps.filter(({ step }) => standingIn(step) > 0)
  const firstStep = steps[0]?.step ?? null
  const [draft, setDraft] = useState<DeedDraft>({
    step: firstStep,
    number: kind === 'lost' || firstStep === null ? '' : String(standingIn(firstStep)),
    bench: '',
    words: '',
  })
  const [isShort, setShort] = useState(false)
  const needs = NEEDS[kind]
  const nextStep = view.steps[view.steps.findIndex(({ step }) => step === draft.step) + 1]
  const place =
    kind === 'advance' ? nextStep?.place : view.steps.find(({ step }) => step === draft.step)?.place
  const benches = (names.nursery?.benches ?? []).filter(bench => place === undefined || bench.place === place)

  /** Finishing makes plants ready to leave, which a hold forbids; all else may be said. */
  const isStopped = kind === 'advance' && view.row.onHold && nextStep === undefined

  const keep = async () => {
    if (isStopped) return
    const body = bodyOfDeed(view, kind, draft)
    if (body === null) return setShort(true)
    const said = await say([body])
    if (!said.kept) return
    done.tell(t(`batch.deed.kept.${kind}`, { name: view.row.name, number: draft.number }), said)
    onClose()
  }

  return (
    <Leaf
      title={`${t('batch.title', { name: view.row.name })}: ${t(`batch.does.${kind}`)}`}
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
        {needs.includes('number') && (
          <>
            <Pick
              label={t('batch.deed.step')}
              value={draft.step ?? ''}
              options={steps.map(({ step, name }) => ({
                id: step as string,
                name: `${name} (${format.number(standingIn(step))})`,
              }))}
              onPick={id =>
                setDraft({
                  ...draft,
                  step: id as StepId,
                  number: kind === 'lost' ? draft.number : String(standingIn(id as StepId)),
                })
              }
            />
            {kind === 'advance' && (
              <p>
                {nextStep === undefined
                  ? t('batch.deed.finish')
                  : t('batch.deed.next', { step: nextStep.name })}
              </p>
            )}
            <Field
              label={t('batch.deed.number')}
              inputMode="numeric"
              value={draft.number}
              onChange={number => setDraft({ ...draft, number })}
            />
          </>
        )}
        {(kind === 'move' || (kind === 'advance' && nextStep !== undefined)) && (
          <Pick
            label={t('batch.deed.bench')}
            value={draft.bench}
            options={[
              { id: '', name: t('batch.deed.sameBench') },
              ...benches.map(({ id, name }) => ({ id: id as string, name })),
            ]}
            onPick={bench => setDraft({ ...draft, bench })}
          />
        )}
        {needs.includes('words') && (
          <Field
            label={t(
              kind === 'lost' ? 'batch.deed.cause' : kind === 'hold' ? 'batch.deed.why' : 'batch.deed.note',
            )}
            {...(kind === 'lost' ? { placeholder: t('batch.deed.causeHint') } : {})}
            value={draft.words}
            onChange={words => setDraft({ ...draft, words })}
          />
        )}
        {isShort && bodyOfDeed(view, kind, draft) === null && (
          <p className="warn" role="alert">
            {t('batch.deed.need')}
          </p>
        )}
        {isStopped && <p className="warn strong">{t('batch.heldFinish')}</p>}
        <Button type="submit" className="deed large" isDisabled={isStopped}>
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
