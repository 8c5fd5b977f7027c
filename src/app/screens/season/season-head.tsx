import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { PlanState, SeasonPlan } from '../../../api/index.ts'
import { client } from '../../data/client.ts'
import { look } from '../../data/queries.ts'
import { useJob } from '../../data/use-job.ts'
import { whoNow } from '../../data/who.ts'
import { useDone } from '../../parts/done.tsx'
import { RefusedLine } from '../../parts/refused-line.tsx'
import { isUnsure } from '../../pictures/chance/unsure.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { paidAndWeighed } from './cost-parts.ts'

/** What came of planning, in words, and what to do with it. */
export function SeasonHead({ state, plan }: { readonly state: PlanState; readonly plan: SeasonPlan }) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const queries = useQueryClient()
  const done = useDone()
  const { start, running } = useJob()
  const isAccepted = state.accepted === plan.id
  const accept = useMutation({
    mutationFn: () => client.acceptPlan(plan.id, whoNow()),
    onSuccess: next => {
      queries.setQueryData(['plan'], next)
      const by = next.acceptedBy
      done.tell(t('season.acceptedDone'), { entries: by === null ? [] : [{ id: by }], kept: true })
    },
  })
  const { paid, weighed } = paidAndWeighed(plan.cost, plan.costParts)
  const gap = format.share(Math.max(0.01, plan.gapShare))
  const { data: rows } = useQuery(look.orders())
  const asked = new Map(rows?.map(({ order }) => [order.id, order.sure]))
  const sure = plan.orders.filter(({ order, chance }) => !isUnsure(chance, asked.get(order) ?? 1)).length

  const outcome = (): string => {
    const { outcome: said } = plan
    switch (said.kind) {
      case 'filled':
        return t('season.outcome.filled')
      case 'short':
        return t('season.outcome.short', {
          count: said.orders.length,
          shown: format.number(said.orders.length),
        })
      case 'stopped early':
        return t('season.outcome.stopped', { gap: format.share(said.gapShare) })
      case 'nothing to plan':
        return t('season.outcome.nothing', { why: tell(said.why) })
    }
  }

  return (
    <div className="page-head">
      <div>
        <h1>{t('season.title')}</h1>
        <p className="season-outcome">
          {outcome()}{' '}
          {plan.orders.length > 0 &&
            t('season.sure', {
              count: plan.orders.length,
              ok: format.number(sure),
              shown: format.number(plan.orders.length),
            })}
        </p>
        <p className="soft small">
          {t('season.madeOn', { day: format.fullDay(plan.madeOn.slice(0, 10)) })}{' '}
          {t('season.simulated', { shown: format.number(plan.seasonsSimulated) })}{' '}
          {plan.outcome.kind !== 'stopped early' && t('season.gap', { gap })}{' '}
          {t(weighed >= 0.5 ? 'season.costAndShort' : 'season.cost', {
            cost: format.money(paid),
            short: format.money(weighed),
          })}{' '}
          {state.entriesSince > 0 &&
            t('season.since', { count: state.entriesSince, shown: format.number(state.entriesSince) })}{' '}
          {isAccepted ? t('season.accepted') : t('season.notAccepted')}
        </p>
      </div>
      <div className="row">
        <Button className="plain" onPress={start} isDisabled={running}>
          {t('season.planAgain')}
        </Button>
        {!isAccepted && plan.outcome.kind !== 'nothing to plan' && (
          <Button
            id="accept"
            className="deed"
            onPress={() => accept.mutate()}
            isDisabled={running || accept.isPending}
          >
            {t('season.accept')}
          </Button>
        )}
      </div>
      {accept.error !== null && <RefusedLine problem={accept.error} />}
    </div>
  )
}
