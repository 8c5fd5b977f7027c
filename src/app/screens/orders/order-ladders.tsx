import { type UseQueryResult, useQuery } from '@tanstack/react-query'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { OrderForecast, RateUsed, Rung } from '../../../planning/index.ts'
import { look } from '../../data/queries.ts'
import { useJob } from '../../data/use-job.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { isUnsure } from '../../pictures/chance/unsure.ts'
import { LadderPicture } from '../../pictures/ladder/ladder-picture.tsx'
import { rungsDown } from '../../pictures/ladder/rungs-down.ts'
import { useWeekSaid } from '../../text/use-week-said.ts'
import { type RateToSet, SetRate } from '../rates/set-rate.tsx'
import { toldLadders } from './told-ladders.ts'

type Ladder = OrderForecast['ladders'][number]

/** As an address names the rate of a step. */
const nameOf = ({ start, batch }: Ladder, { step }: Rung): string => JSON.stringify([start, batch, step])

/** The count-backs that together fill an order: batches that stand now, and starts to come. */
export function OrderLadders({ planned }: { readonly planned: UseQueryResult<OrderForecast | null> }) {
  const { t } = useTranslation()
  const weekSaid = useWeekSaid()
  const names = useNames()
  const forecast = planned.data ?? undefined
  const { start, running } = useJob()
  const { data: batches } = useQuery(look.batchesAlive())
  const [opened, open] = useOpened()
  const ladders = toldLadders(forecast?.ladders ?? [])
  if (planned.data === undefined)
    return (
      <Asked query={planned} what={t('orders.howMade')}>
        {() => null}
      </Asked>
    )
  if (forecast === undefined || ladders.length === 0)
    return (
      <div className="row soft">
        <p>
          {t(
            forecast === undefined
              ? 'orders.noLadder'
              : isUnsure(forecast.chance, forecast.asked)
                ? 'orders.noSource'
                : 'orders.noOwnSource',
          )}
        </p>
        {forecast === undefined && (
          <Button className="plain" onPress={start} isDisabled={running}>
            {t('orders.planNow')}
          </Button>
        )}
      </div>
    )
  const titleOf = ({ batch, rungs }: Ladder): string => {
    if (batch !== null)
      return t('orders.ladderBatch', { batch: batches?.find(row => row.id === batch)?.name ?? batch })
    const week = rungs[0]?.week
    if (week === undefined) return t('orders.ladderPlain')
    return t('orders.ladderStart', { week: weekSaid(week) })
  }
  /** Where a batch stands now its own count may be the rate: that is not to be overruled. */
  const toSet = (
    { batch, kind, protocol, rungs }: Ladder,
    { step, name }: Rung,
    rate: RateUsed,
  ): RateToSet | null =>
    step === null || (batch !== null && step === rungs[0]?.step)
      ? null
      : { ...rate, protocol, step, stepName: name, kind, kindName: names.kind(kind) }
  const chosen = ladders
    .flatMap(ladder => rungsDown(ladder.rungs).map(({ rung, rate }) => ({ ladder, rung, rate })))
    .map(({ ladder, rung, rate }) =>
      rate !== null && nameOf(ladder, rung) === openedOf(opened, 'rate') ? toSet(ladder, rung, rate) : null,
    )
    .find(one => one !== null)
  return (
    <section className="stack">
      <div>
        <h3>{t('orders.howMade')}</h3>
        <p className="soft small">{t('orders.tryRate')}</p>
      </div>
      {ladders.map(ladder => (
        <div key={`${ladder.start} ${ladder.batch}`} className="sheet">
          <LadderPicture
            title={titleOf(ladder)}
            says={`${names.kind(ladder.kind)}: ${names.protocol(ladder.protocol)}`}
            rungs={ladder.rungs}
            ask={(rung, rate) => toSet(ladder, rung, rate) && (() => open(`rate ${nameOf(ladder, rung)}`))}
          />
        </div>
      ))}
      {chosen !== undefined && <SetRate rate={chosen} onClose={() => open(null)} />}
    </section>
  )
}
