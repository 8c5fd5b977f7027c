import { useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { PlanState, SeasonPlan } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { useJob } from '../../data/use-job.ts'
import { Asked } from '../../parts/asked.tsx'
import './season.css'
import { useTell } from '../../text/use-tell.ts'
import { SeasonBeyond } from './season-beyond.tsx'
import { SeasonChanges } from './season-changes.tsx'
import { SeasonCost } from './season-cost.tsx'
import { SeasonHead } from './season-head.tsx'
import { SeasonLimits } from './season-limits.tsx'
import { SeasonLoads } from './season-loads.tsx'
import { SeasonStrip } from './season-strip.tsx'
import { StartDetail } from './start-detail.tsx'

const route = getRouteApi('/season')

/** The season plan: what to start and when, what it asks of the nursery, what limits it and what changed. */
export function SeasonScreen() {
  const { t } = useTranslation()
  const planned = useQuery(look.plan())
  const season = useQuery({ ...look.seasonPlan(), enabled: planned.data?.plan != null })
  const { start, running } = useJob()

  return (
    <Asked query={planned} what={t('season.title')}>
      {state => {
        if (state.plan === null)
          return (
            <div className="stack">
              <h1>{t('season.none')}</h1>
              <p className="season-none">{t('season.noneSays')}</p>
              <p>
                <Button className="deed large" onPress={start} isDisabled={running}>
                  {t('season.plan')}
                </Button>
              </p>
            </div>
          )
        return (
          <Asked query={season} what={t('season.title')}>
            {plan => <SeasonShown plan={plan} state={state} />}
          </Asked>
        )
      }}
    </Asked>
  )
}

function SeasonShown({ plan, state }: { readonly plan: SeasonPlan; readonly state: PlanState }) {
  const { t } = useTranslation()
  const tell = useTell()
  const search = route.useSearch()
  const navigate = route.useNavigate()
  const onTry = (tried: string) =>
    void navigate({ search: was => ({ ...was, tried }), replace: true, resetScroll: false })
  const chosen = plan.starts.find(({ id }) => id === search.start)
  return (
    <div className="stack">
      <SeasonHead state={state} plan={plan} />
      <SeasonStrip
        plan={plan}
        chosen={search.start ?? null}
        tried={search.tried ?? null}
        onChoose={(start, tried) =>
          void navigate({
            search: was => ({ ...was, start, tried }),
            replace: start === search.start,
            resetScroll: false,
          })
        }
      />
      {chosen !== undefined && (
        <StartDetail
          plan={plan}
          start={chosen}
          tried={search.tried ?? chosen.week}
          onTry={onTry}
          onClose={() => {
            document.querySelector<SVGElement>(`[data-start="${CSS.escape(chosen.id)}"]`)?.focus()
            void navigate({ search: ({ start: _, tried: __, ...was }) => was, resetScroll: false })
          }}
        />
      )}
      <SeasonLoads plan={plan} />
      <div className="season-words">
        <SeasonLimits plan={plan} />
        <SeasonChanges plan={plan} accepted={state.accepted} />
      </div>
      <div className="season-words">
        <SeasonCost plan={plan} />
        <SeasonBeyond plan={plan} />
      </div>
      {plan.assumed.length > 0 && (
        <details className="sheet">
          <summary>
            {t('season.assumed', { count: plan.assumed.length, shown: String(plan.assumed.length) })}
          </summary>
          <ul className="season-assumed">
            {plan.assumed.map(sentence => (
              <li key={tell(sentence)}>{tell(sentence)}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  )
}
