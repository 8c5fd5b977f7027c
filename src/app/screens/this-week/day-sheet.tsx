import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { useNames } from '../../data/use-names.tsx'
import { VirtualList } from '../../parts/virtual-list.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { type DayRow, dayRows } from './day-rows.ts'
import { RoutineRow } from './routine-row.tsx'
import type { TaskGround } from './task-ground.ts'
import { TaskRow } from './task-row.tsx'
import type { WorkDay } from './walking-order.ts'

const HEIGHTS: Readonly<Record<DayRow['is'], number>> = { place: 44, routine: 88, task: 72 }

/** One day's work, place by place. */
export function DaySheet({
  day,
  ground,
  today,
}: {
  readonly day: WorkDay
  readonly ground: TaskGround
  readonly today: string
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set())
  const rows = useMemo(() => dayRows(day, open), [day, open])
  const title = day.day === null ? t('work.unfit') : format.weekday(day.day)
  const isToday = day.day === today
  const toggle = (key: string) =>
    setOpen(was => (was.has(key) ? new Set([...was].filter(one => one !== key)) : new Set([...was, key])))
  const shown = (row: DayRow) => {
    switch (row.is) {
      case 'place': {
        const { isAtMothers, bench } = row.place
        return (
          <h3 className="day-bench">
            {isAtMothers ? t('work.atMothers') : bench === null ? t('trade.noBench') : names.bench(bench)}
          </h3>
        )
      }
      case 'routine':
        return (
          <RoutineRow
            tasks={row.tasks}
            ground={ground}
            isOpen={open.has(row.key)}
            onOpen={() => toggle(row.key)}
          />
        )
      case 'task':
        return <TaskRow task={row.task} ground={ground} ofRoutine={row.ofRoutine} />
    }
  }
  return (
    <section className={isToday ? 'sheet day today' : 'sheet day'} aria-label={title}>
      <header className="day-head">
        <h2>
          {title}
          {day.day !== null && <span className="soft"> {format.day(day.day)}</span>}
          {isToday && <span className="tag"> {t('work.today')}</span>}
        </h2>
        <span className="soft">{t('work.daySum', { time: format.hours(day.minutes) })}</span>
      </header>
      <VirtualList items={rows} label={title} rowHeight={({ is }) => HEIGHTS[is]} keyOf={({ key }) => key}>
        {shown}
      </VirtualList>
    </section>
  )
}
