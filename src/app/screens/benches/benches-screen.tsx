import { useQuery } from '@tanstack/react-query'
import { getRouteApi, useNavigate } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { BenchId } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import { useDone } from '../../parts/done.tsx'
import { SaidSlider } from '../../parts/said-slider.tsx'
import { BenchPicture } from '../../pictures/bench-plan/bench-picture.tsx'
import { SitePicture } from '../../pictures/bench-plan/site-picture.tsx'
import { weekAfter, weeksBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekSaid } from '../../text/use-week-said.ts'
import { BenchDeeds } from './bench-deeds.tsx'
import { FullAhead } from './full-ahead.tsx'
import { type Held, InHand } from './in-hand.tsx'

const route = getRouteApi('/benches')
const WEEKS_AHEAD = 78

/** The benches to scale, filled with what stands there; a slider goes through the weeks to come. */
export function BenchesScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const weekSaid = useWeekSaid()
  const names = useNames()
  const { nursery, benches } = names
  const { week: asked, bench: chosen } = route.useSearch()
  const navigate = route.useNavigate()
  const week = asked ?? nursery?.week
  const query = useQuery({ ...look.benches(week), placeholderData: was => was, enabled: week !== undefined })
  const { data: full = [] } = useQuery(look.fullBenches())
  const goTo = useNavigate()
  const [held, setHeld] = useState<Held | null>(null)
  const [aimed, setAimed] = useState<string | null>(null)
  const done = useDone()
  const leave = () => {
    setHeld(null)
    setAimed(null)
  }
  const putDown = async (to: string | null) => {
    const moved = held
    leave()
    if (moved === null || to === null || to === moved.bench) return
    const { batch, stepId: step, number, name } = moved.stand
    const said = await say([{ kind: 'moved/1', batch: batch!, step: step!, number, to: to as BenchId }])
    done.tell(
      t('benches.move.done', { number: format.number(number), batch: name, bench: names.bench(to) }),
      said,
    )
  }

  return (
    <Asked query={query} what={t('benches.title')}>
      {views => {
        const byId = new Map(views.map(view => [view.bench as string, view]))
        const over = views.filter(
          ({ stands, areaSquareMetres }) =>
            stands.reduce((sum, { squareMetres }) => sum + squareMetres, 0) > areaSquareMetres + 0.05,
        ).length
        const ahead = weeksBetween(nursery!.week, week!)
        const fullest = [...views].sort(
          (a, b) =>
            b.stands.reduce((sum, s) => sum + s.squareMetres, 0) / Math.max(1, b.areaSquareMetres) -
            a.stands.reduce((sum, s) => sum + s.squareMetres, 0) / Math.max(1, a.areaSquareMetres),
        )[0]
        const shown = (chosen !== undefined && byId.get(chosen)) || fullest
        const marks = [...new Set(full.flatMap(({ weeks }) => weeks))].map(one =>
          weeksBetween(nursery!.week, one),
        )
        return (
          // biome-ignore lint/a11y/noStaticElementInteractions: Escape leaves what is in hand, wherever the focus is
          <div className="stack" onKeyDown={event => event.key === 'Escape' && leave()}>
            <div>
              <h1>{t('benches.title')}</h1>
              <p className="soft" aria-live="polite">
                {t('benches.says', {
                  week: weekSaid(week!),
                  over:
                    over === 0
                      ? t('benches.overNone')
                      : t('benches.over', { count: over, shown: format.number(over) }),
                })}
              </p>
            </div>
            <SaidSlider
              label={t('benches.week')}
              said={`${weekSaid(week!)}, ${format.weekDays(week!)}; ${
                ahead === 0
                  ? t('benches.now')
                  : t('benches.ahead', { count: ahead, shown: format.number(ahead) })
              }`}
              to={WEEKS_AHEAD}
              value={ahead}
              marks={marks}
              onChange={next =>
                void navigate({
                  search: was => ({ ...was, week: next === 0 ? undefined : weekAfter(nursery!.week, next) }),
                  replace: true,
                  resetScroll: false,
                })
              }
            />
            <FullAhead full={full} />
            <SitePicture
              benches={nursery!.benches}
              views={byId}
              chosen={shown?.bench ?? null}
              aimed={aimed}
              onChoose={bench =>
                held === null
                  ? void navigate({ search: was => ({ ...was, bench }), resetScroll: false })
                  : void putDown(bench)
              }
              {...(held !== null && { onAim: setAimed })}
            />
            {shown !== undefined && <BenchDeeds bench={shown.bench} />}
            {shown !== undefined && (
              <InHand
                held={held}
                aimed={aimed === null ? undefined : byId.get(aimed)}
                canMove={ahead === 0}
              />
            )}
            {shown !== undefined && (
              <BenchPicture
                key={shown.bench}
                bench={benches.get(shown.bench)!}
                view={shown}
                {...(ahead === 0 && {
                  hand: {
                    held: held?.stand ?? null,
                    onTake: stand => setHeld({ stand, bench: shown.bench }),
                    onAim: setAimed,
                    onPut: bench => void putDown(bench),
                  },
                })}
                onOpen={batch => void goTo({ to: '/batches/$batch', params: { batch } })}
              />
            )}
          </div>
        )
      }}
    </Asked>
  )
}
