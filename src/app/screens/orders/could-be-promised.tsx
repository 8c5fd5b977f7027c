import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { CouldBePromised as Promised } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { AskedLong } from '../../parts/asked.tsx'
import { Field } from '../../parts/field.tsx'
import { useTypedLink } from '../../parts/use-typed-link.ts'
import { PromisePicture } from '../../pictures/promise/promise-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { useWeekSaid } from '../../text/use-week-said.ts'
import { KindField } from './kind-field.tsx'

const route = getRouteApi('/orders')

const isNumber = (said: string): boolean => Number.isInteger(Number(said)) && Number(said) >= 1
const isSure = (percent: string): boolean => Number(percent) >= 50 && Number(percent) <= 99

/** What could be promised to a new buyer: the earliest week for a number of a kind, and how many in each week. */
export function CouldBePromised() {
  const { t } = useTranslation()
  const { promise: kind = null, number: numberAsked = '100', sure: sureAsked = '90' } = route.useSearch()
  const navigate = route.useNavigate()
  /** A link that asks opens it; from then on it is opened and closed by hand. */
  const [isLinked] = useState(kind !== null)
  const put = (more: { promise?: string | undefined; number?: string; sure?: string }) =>
    void navigate({ search: was => ({ ...was, ...more }), replace: true, resetScroll: false })
  const [typed, type, settleNumber] = useTypedLink(numberAsked, number => {
    if (isNumber(number)) put({ number })
  })
  const [percent, typePercent, settleSure] = useTypedLink(sureAsked, sure => {
    if (isSure(sure)) put({ sure })
  })
  const { data: state } = useQuery(look.plan())
  const number = Number(numberAsked)
  const sure = Number(sureAsked) / 100
  const isAsked =
    kind !== null &&
    isNumber(numberAsked) &&
    isSure(sureAsked) &&
    isNumber(typed) &&
    isSure(percent) &&
    state?.plan != null
  const asked = look.promise({ kind: kind ?? '', number, sure })
  const promise = useQuery({
    ...asked,
    enabled: isAsked,
    placeholderData: keepPreviousData,
  })
  return (
    <details id="promise" className="sheet promise" open={isLinked || undefined}>
      <summary>
        <h2>{t('orders.promise.title')}</h2>
      </summary>
      <div className="stack">
        <p className="soft">{t(state?.plan === null ? 'orders.promise.noPlan' : 'orders.promise.says')}</p>
        <div className="promise-asked">
          <KindField value={kind} onPick={promise => put({ promise: promise ?? undefined })} />
          <Field
            label={t('orders.form.number')}
            inputMode="numeric"
            value={typed}
            wrong={isNumber(typed) ? undefined : t('orders.form.need.number')}
            onChange={type}
            onBlur={settleNumber}
          />
          <Field
            label={t('orders.form.sure')}
            inputMode="numeric"
            value={percent}
            wrong={isSure(percent) ? undefined : t('orders.form.need.sure')}
            onChange={typePercent}
            onBlur={settleSure}
          />
        </div>
        {isAsked && (
          <AskedLong query={promise} of="promise" what={t('orders.promise.title')} asked={asked.queryKey}>
            {found => <PromiseSaid found={found} number={number} sure={sure} />}
          </AskedLong>
        )}
      </div>
    </details>
  )
}

function PromiseSaid({
  found: { kind, firstWeek, numbers, middle, fromPlan, ifBegun, lack },
  number,
  sure,
}: {
  readonly found: Promised
  readonly number: number
  readonly sure: number
}) {
  const { t } = useTranslation()
  const tell = useTell()
  const format = useFormat()
  const weekSaid = useWeekSaid()
  const names = useNames()
  const week = (text: string) =>
    t('orders.promise.week', {
      week: weekSaid(text),
      year: text.slice(0, 4),
    })
  return (
    <div className="stack" aria-live="polite">
      <p className="strong">
        {fromPlan === null
          ? t('orders.promise.notFromPlan', { number: format.number(number) })
          : t('orders.promise.fromPlan', {
              number: format.number(number),
              week: week(fromPlan.week),
              chance: format.chance(fromPlan.chance),
            })}
      </p>
      <p>
        {ifBegun === null
          ? t('orders.promise.notBegun')
          : t('orders.promise.ifBegun', {
              protocol: names.protocol(ifBegun.protocol),
              start: week(ifBegun.week),
              started: format.number(ifBegun.number),
              week: week(ifBegun.readyWeek),
              chance: format.chance(ifBegun.chance),
            })}{' '}
        {lack !== null &&
          t(ifBegun === null ? 'orders.promise.lack' : 'orders.promise.lackEarlier', { lack: tell(lack) })}
      </p>
      <PromisePicture
        title={t('orders.promise.byWeek', { kind: names.kind(kind) })}
        says={t('orders.promise.byWeekSays', { sure: format.share(sure) })}
        first={firstWeek}
        surely={numbers}
        middle={middle}
        sure={t('orders.promise.surely', { sure: format.share(sure) })}
      />
      <p className="soft small">{t('orders.promise.basis')}</p>
    </div>
  )
}
