import { useQuery } from '@tanstack/react-query'
import { Link, useNavigate } from '@tanstack/react-router'
import { type KeyboardEvent, lazy, Suspense, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { dayAfter, mondayOf, weekAfter } from '../text/format.ts'
import { useFormat } from '../text/use-format.tsx'
import { rulerWeeks } from './ruler-weeks.ts'

/** As far as a key moves, in weeks. */
const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: 4,
  PageDown: -4,
  Home: -1_000,
  End: 1_000,
}

const YearAhead = lazy(async () => ({ default: (await import('./year-ahead.tsx')).YearAhead }))

/**
 * The coming year as the edge of a ruler: one tick a week, as long as its planned work; over hours it turns red.
 * A week is picked by the pointer, or by arrow keys and Enter. The same as a drawing with its table is one button away.
 */
export function SeasonRuler() {
  const { t } = useTranslation()
  const format = useFormat()
  const navigate = useNavigate()
  const { data: nursery } = useQuery(look.nursery())
  const { data: planned } = useQuery(look.plan())
  const plan = planned?.plan ?? null
  const weeks = useMemo(() => (nursery === undefined ? [] : rulerWeeks(nursery.week, plan)), [nursery, plan])
  const [picked, setPicked] = useState(0)
  const [isOpen, setOpen] = useState(false)
  if (nursery === undefined) return <div className="ruler" />
  const open = (index: number) =>
    void navigate({ to: '/work', search: { week: weekAfter(nursery.week, index) } })
  const { week, hours, isOver } = weeks[picked]!
  const days = format.weekDays(week)
  const says = t(isOver ? 'shell.ruler.over' : 'shell.ruler.week', {
    week: format.weekByNumber ? `${t('common.week', { week: format.week(week) })}, ${days}` : days,
    hours: format.hours(60 * hours),
  })
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = STEPS[event.key]
    if (step === undefined && event.key !== 'Enter') return
    event.preventDefault()
    if (step === undefined) open(picked)
    else setPicked(Math.max(0, Math.min(weeks.length - 1, picked + step)))
  }
  const step = 100 / weeks.length
  return (
    <div className="ruler">
      <Link to="/work" className="ruler-today">
        <b>{format.weekdayAndDay(nursery.today)}</b>
        {format.weekByNumber && <span>{t('common.week', { week: format.week(nursery.week) })}</span>}
      </Link>
      <div
        className="ruler-edge"
        role="slider"
        tabIndex={0}
        aria-label={t('shell.ruler.label')}
        aria-valuemin={0}
        aria-valuemax={weeks.length - 1}
        aria-valuenow={picked}
        aria-valuetext={says}
        onKeyDown={onKeyDown}
        onClick={event => {
          const box = event.currentTarget.getBoundingClientRect()
          open(Math.floor(((event.clientX - box.left) / box.width) * weeks.length))
        }}
      >
        <svg viewBox="0 0 100 30" preserveAspectRatio="none" aria-hidden="true">
          <path
            d={`M${picked * step + step / 2} 30V0`}
            className="ruler-picked"
            vectorEffect="non-scaling-stroke"
          />
          {weeks.map(({ week, share, isOver, opensMonth }, index) => (
            <path
              key={week}
              d={`M${index * step + step / 2} 30V${30 - Math.max(3, 24 * Math.min(1.15, share))}`}
              className={isOver ? 'tick over' : opensMonth ? 'tick month' : 'tick'}
              vectorEffect="non-scaling-stroke"
            />
          ))}
        </svg>
      </div>
      <div className="ruler-months" aria-hidden="true">
        {weeks.map(({ week, opensMonth }, index) =>
          opensMonth ? (
            <span key={week} style={{ left: `${index * step}%` }}>
              {format.month(Number(dayAfter(mondayOf(week), 6).slice(5, 7)) - 1)}
            </span>
          ) : null,
        )}
      </div>
      <output className="ruler-says" aria-hidden="true">
        {says}
      </output>
      <Button className="quiet ruler-open" aria-label={t('shell.ruler.open')} onPress={() => setOpen(true)}>
        <svg width={18} height={18} viewBox="0 0 18 18" aria-hidden="true">
          <path d="M2 16V9M6.5 16V4M11 16V11M15.5 16V6" />
        </svg>
      </Button>
      {isOpen && (
        <Suspense>
          <YearAhead weeks={weeks} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </div>
  )
}
