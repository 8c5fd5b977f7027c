import { useQuery, useQueryClient } from '@tanstack/react-query'
import { Link, useNavigate, useRouter } from '@tanstack/react-router'
import { useEffect, useRef, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import type { Body } from '../../../record/index.ts'
import type { Sign, StepId } from '../../../trade/index.ts'
import { plansAfterCount, setAftermath } from '../../data/aftermath.ts'
import { atLeisure } from '../../data/at-leisure.ts'
import { outbox } from '../../data/outbox/use-outbox.ts'
import { painted } from '../../data/painted.ts'
import { look } from '../../data/queries.ts'
import { say } from '../../data/say.ts'
import { deviceDay } from '../../data/today.ts'
import { useJob } from '../../data/use-job.ts'
import { useNames } from '../../data/use-names.tsx'
import { Choices } from '../../parts/choices.tsx'
import { useDone } from '../../parts/done.tsx'
import { NumberPad } from '../../parts/number-pad.tsx'
import { daysBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { countAsked } from './count-asked.ts'
import { COUNT_FIELDS, type CountField, EMPTY_COUNT, readCount, restOf, typed } from './count-draft.ts'

/** The page is drawn, with its answers. */
const QUIET_MS = 500

export interface StandingStep {
  readonly id: StepId
  readonly name: string
  readonly sign: Sign
  readonly number: number
}

/** Three numbers and one pad: taken, dead, not yet to tell. */
export function CountPad({
  view,
  standing,
  firstStep,
  task,
}: {
  readonly view: BatchView
  readonly standing: readonly StandingStep[]
  readonly firstStep: StepId
  /** What asked for the count of the first step. */
  readonly task: string | null
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const navigate = useNavigate()
  const router = useRouter()
  const queries = useQueryClient()
  const done = useDone()
  const { nursery } = useNames()
  const { data: planned } = useQuery(look.plan())
  const { data: rows } = useQuery(look.orders())
  const { data: week } = useQuery(look.work(undefined))
  const { start, running } = useJob()
  const [step, setStep] = useState(firstStep)
  const [draft, setDraft] = useState(EMPTY_COUNT)
  const [field, setField] = useState<CountField>('taken')
  const [isEmpty, setEmpty] = useState(false)
  const inputs = useRef<Partial<Record<CountField, HTMLInputElement | null>>>({})
  const here = standing.find(({ id }) => id === step) ?? standing[0]!
  const read = readCount(draft, here.number)
  const { row } = view

  // Where the count leads: fetched once this page stands, so that it does not wait for it.
  useEffect(() => {
    const next = { to: '/batches/$batch', params: { batch: row.id } } as const
    void atLeisure(queries, QUIET_MS).then(() => router.preloadRoute(next))
  }, [queries, router, row.id])

  const choose = (next: CountField) => {
    setField(next)
    inputs.current[next]?.focus()
  }
  const onNext = () => choose(COUNT_FIELDS[(COUNT_FIELDS.indexOf(field) + 1) % COUNT_FIELDS.length]!)

  const keep = async () => {
    if (read === null) return setEmpty(true)
    const { taken, dead, undecided } = read
    const bodies: Body[] = [
      { kind: 'counted/1', batch: row.id, step: here.id, sign: here.sign, taken, dead, undecided },
    ]
    const asked = (here.id === firstStep ? task : null) ?? countAsked(week, row.id, here.id)
    if (asked !== null)
      bodies.push({ kind: 'task-done/2', task: asked, number: taken + dead + undecided, minutes: null })
    const planBefore = planned?.plan?.id ?? null
    setAftermath({
      batch: row.id,
      planBefore,
      throughSeqBefore: nursery?.throughSeq ?? 0,
      chances: Object.fromEntries(
        rows?.flatMap(({ order, chance }) => (chance === null ? [] : [[order.id, chance]])) ?? [],
      ),
      orders: view.orders.map(({ order }) => order),
    })
    const said = await say(bodies)
    if (!said.kept) return setAftermath(null)
    done.tell(
      t('batch.countPage.kept', {
        name: row.name,
        taken: format.number(taken),
        dead: format.number(dead),
        undecided: format.number(undecided),
      }),
      said,
    )
    await painted()
    void outbox.send().then(() => {
      if (outbox.state().waiting.length === 0 && planBefore !== null && !running && plansAfterCount()) start()
    })
    void navigate({ to: '/batches/$batch', params: { batch: row.id } })
  }

  const label = (which: CountField): string =>
    which === 'taken'
      ? t('batch.countPage.taken', { sign: t(`trade.sign.${here.sign}`) })
      : t(`batch.countPage.${which}`)
  const sum = (): string => {
    if (read === null) return t('batch.countPage.hint')
    if (read.differs === 0) return t('batch.countPage.even', { standing: format.number(here.number) })
    const many = { count: Math.abs(read.differs), shown: format.number(Math.abs(read.differs)) }
    return t(read.differs > 0 ? 'batch.countPage.over' : 'batch.countPage.under', many)
  }

  return (
    <form
      className="count"
      onSubmit={event => {
        event.preventDefault()
        void keep()
      }}
    >
      <div>
        <Link to="/batches/$batch" params={{ batch: row.id }} className="count-back">
          {row.kindName}
        </Link>
        <h1>{t('batch.countPage.title', { name: row.name })}</h1>
        <p>
          {t('batch.countPage.says', {
            day: format.number(daysBetween(row.startedOn, nursery?.today ?? deviceDay())),
            standing: format.number(here.number),
            step: term(here.name),
          })}
        </p>
      </div>
      {standing.length > 1 && (
        <Choices
          label={t('batch.countPage.step')}
          value={here.id}
          options={standing.map(({ id, name, number }) => ({
            id,
            name: `${term(name)} (${format.number(number)})`,
          }))}
          onPick={setStep}
        />
      )}
      <div className="count-fields">
        {COUNT_FIELDS.map(which => (
          <label key={which} className={which === field ? 'count-field chosen' : 'count-field'}>
            <span>{label(which)}</span>
            <input
              ref={element => {
                inputs.current[which] = element
              }}
              // biome-ignore lint/a11y/noAutofocus: the page is for typing this number
              autoFocus={which === 'taken'}
              inputMode="none"
              autoComplete="off"
              value={draft[which]}
              placeholder={which === 'undecided' ? format.number(restOf(draft, here.number)) : '0'}
              onFocus={() => setField(which)}
              onChange={event =>
                setDraft({ ...draft, [which]: event.target.value.replace(/\D/g, '').slice(0, 7) })
              }
            />
          </label>
        ))}
      </div>
      <p className={read !== null && read.differs !== 0 ? 'count-sum warn' : 'count-sum soft'} role="status">
        {isEmpty && read === null ? t('batch.countPage.needsNumber') : sum()}
      </p>
      <NumberPad
        next={t('batch.countPage.next')}
        erase={t('batch.countPage.erase')}
        onNext={onNext}
        onKey={key => setDraft(typed(draft, field, key))}
      />
      <Button type="submit" className="deed large wide">
        {t('batch.countPage.keep')}
      </Button>
    </form>
  )
}
