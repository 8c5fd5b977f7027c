import { getRouteApi } from '@tanstack/react-router'
import { useEffect, useRef, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import { Choices } from '../../parts/choices.tsx'
import { fullest } from '../../pictures/load/load-layout.ts'
import { useFormat } from '../../text/use-format.tsx'
import { type LoadTried, triedAs, triedIn } from './capacity-link.ts'
import { OneLoad } from './one-load.tsx'
import { loadInWeeks, shownWeeks, spanAtFirst } from './shown-weeks.ts'

const route = getRouteApi('/season')
const WHAT = ['place', 'skill', 'mother'] as const
const SHOWN_AT_FIRST = 8
const RESTS_MS = 300

/** What the plan asks of every bench, hand and mother tree in the weeks of the strip above, the fullest first. */
export function SeasonLoads({ plan }: { readonly plan: SeasonPlan }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { from, span = spanAtFirst(), load: what = 'place', suppose } = route.useSearch()
  const navigate = route.useNavigate()
  const shownIn = shownWeeks(plan, from, span)
  const [all, setAll] = useState(false)
  const [tried, setTriedHere] = useState(() => (suppose === undefined ? null : triedIn(suppose)))
  const writing = useRef<ReturnType<typeof setTimeout>>(undefined)
  /** Moved about, it is written into the address once it rests. */
  const setTried = (next: LoadTried | null) => {
    setTriedHere(next)
    clearTimeout(writing.current)
    writing.current = setTimeout(
      () =>
        void navigate({
          search: was => ({ ...was, suppose: next === null ? undefined : triedAs(next) }),
          replace: true,
          resetScroll: false,
        }),
      RESTS_MS,
    )
  }
  useEffect(() => () => clearTimeout(writing.current), [])
  const loads = plan.loads
    .filter(load => load.what === what)
    .map(all => {
      const load = loadInWeeks(all, plan.firstWeek, shownIn)
      return { load, full: fullest(load) }
    })
    .sort((a, b) => b.full.share - a.full.share)
  const used = loads.filter(({ full }) => full.share > 0)
  const shown = used.filter(({ load }, place) => all || place < SHOWN_AT_FIRST || load.id === tried?.load)

  return (
    <section className="sheet stack season-loads">
      <div className="page-head">
        <div>
          <h2>{t('season.loads')}</h2>
          <p className="soft small">{t('season.loadsSays')}</p>
        </div>
        <Choices
          label={t('season.loads')}
          value={what}
          options={WHAT.map(id => ({ id, name: t(`season.load.${id}`) }))}
          onPick={id => {
            clearTimeout(writing.current)
            setTriedHere(null)
            void navigate({
              search: ({ suppose: _, ...was }) => ({ ...was, load: id }),
              replace: true,
              resetScroll: false,
            })
            setAll(false)
          }}
        />
      </div>
      <div className="loads">
        {shown.map(({ load, full }) => (
          <OneLoad
            key={load.id}
            load={load}
            full={full}
            firstWeek={shownIn.first}
            tried={tried?.load === load.id ? tried.of : null}
            onTry={of => setTried(of && { load: load.id, of })}
          />
        ))}
      </div>
      {used.length > shown.length && (
        <p>
          <Button className="plain" onPress={() => setAll(true)}>
            {t('season.loadMore', { shown: format.number(used.length) })}
          </Button>
        </p>
      )}
    </section>
  )
}
