import { type UseQueryResult, useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { OrderForecast } from '../../../planning/index.ts'
import { look } from '../../data/queries.ts'
import { useJob } from '../../data/use-job.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import { isUnsure } from '../../pictures/chance/unsure.ts'
import { LadderPicture } from '../../pictures/ladder/ladder-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { type RateToSet, SetRate } from '../rates/set-rate.tsx'

/** The count-backs that together fill an order: batches that stand now, and starts to come. */
export function OrderLadders({ planned }: { readonly planned: UseQueryResult<OrderForecast | null> }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const forecast = planned.data ?? undefined
  const { start, running } = useJob()
  const { data: batches } = useQuery(look.batchesAlive())
  const [chosen, setChosen] = useState<RateToSet | null>(null)
  const ladders = (forecast?.ladders ?? []).filter(({ rungs }) => rungs.some(({ number }) => number >= 0.5))
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
  const titleOf = ({ batch, rungs }: OrderForecast['ladders'][number]): string => {
    if (batch !== null)
      return t('orders.ladderBatch', { batch: batches?.find(row => row.id === batch)?.name ?? batch })
    const week = rungs[0]?.week
    if (week === undefined) return t('orders.ladderPlain')
    return t('orders.ladderStart', {
      week: format.weekByNumber
        ? t('common.week', { week: format.week(week) })
        : t('common.weekOf', { week: format.week(week) }),
    })
  }
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
            ask={(rung, rate) => {
              const { step, name } = rung
              // Where a batch stands now its own count may be the rate: that is not to be overruled.
              if (step === null || (ladder.batch !== null && rung === ladder.rungs[0])) return null
              const { kind, protocol } = ladder
              return () =>
                setChosen({ ...rate, protocol, step, stepName: name, kind, kindName: names.kind(kind) })
            }}
          />
        </div>
      ))}
      {chosen !== null && <SetRate rate={chosen} onClose={() => setChosen(null)} />}
    </section>
  )
}
