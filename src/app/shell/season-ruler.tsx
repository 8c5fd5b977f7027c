import { useQuery } from '@tanstack/react-query'
import { Link, useNavigate } from '@tanstack/react-router'
import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { dayAfter, mondayOf, weekAfter } from '../text/format.ts'
import { useFormat } from '../text/use-format.tsx'
import { rulerWeeks } from './ruler-weeks.ts'

/**
 * The coming year as the edge of a ruler: one tick a week, as long as its planned work; over hours it turns red.
 * The pointer may pick a week; by keyboard, the week's own screen goes back and forth.
 */
export function SeasonRuler() {
  const { t } = useTranslation()
  const format = useFormat()
  const navigate = useNavigate()
  const { data: nursery } = useQuery(look.nursery())
  const { data: planned } = useQuery(look.plan())
  const plan = planned?.plan ?? null
  const weeks = useMemo(() => (nursery === undefined ? [] : rulerWeeks(nursery.week, plan)), [nursery, plan])
  if (nursery === undefined) return <div className="ruler" />
  const step = 100 / weeks.length
  return (
    <div className="ruler">
      <Link to="/work" className="ruler-today">
        <b>{format.weekdayAndDay(nursery.today)}</b>
        {format.weekByNumber && <span>{t('common.week', { week: format.week(nursery.week) })}</span>}
      </Link>
      <svg
        className="ruler-edge"
        viewBox="0 0 100 30"
        preserveAspectRatio="none"
        aria-hidden="true"
        onClick={event => {
          const box = event.currentTarget.getBoundingClientRect()
          const index = Math.floor(((event.clientX - box.left) / box.width) * weeks.length)
          void navigate({ to: '/work', search: { week: weekAfter(nursery.week, index) } })
        }}
      >
        {weeks.map(({ week, share, isOver, opensMonth }, index) => (
          <path
            key={week}
            d={`M${index * step + step / 2} 30V${30 - Math.max(3, 24 * Math.min(1.15, share))}`}
            className={isOver ? 'tick over' : opensMonth ? 'tick month' : 'tick'}
            vectorEffect="non-scaling-stroke"
          />
        ))}
      </svg>
      <div className="ruler-months" aria-hidden="true">
        {weeks.map(({ week, opensMonth }, index) =>
          opensMonth ? (
            <span key={week} style={{ left: `${index * step}%` }}>
              {format.month(Number(dayAfter(mondayOf(week), 6).slice(5, 7)) - 1)}
            </span>
          ) : null,
        )}
      </div>
    </div>
  )
}
