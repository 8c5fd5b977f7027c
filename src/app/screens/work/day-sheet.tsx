import { useTranslation } from 'react-i18next'
import { useNames } from '../../data/use-names.ts'
import { useFormat } from '../../text/use-format.ts'
import { RoutineRow } from './routine-row.tsx'
import { routines } from './routines.ts'
import { TaskRow, type TaskState } from './task-row.tsx'
import type { WorkDay } from './walking-order.ts'

/** One day's work, place by place. */
export function DaySheet({
  day: { day, minutes, places },
  sent,
  unsent,
  stopped,
  today,
}: {
  readonly day: WorkDay
  readonly sent: ReadonlySet<string>
  readonly unsent: ReadonlySet<string>
  readonly stopped: ReadonlySet<string>
  readonly today: string
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const stateOf = (task: string): TaskState =>
    sent.has(task) ? 'done' : unsent.has(task) ? 'waiting' : stopped.has(task) ? 'stopped' : 'open'
  const title = day === null ? t('work.unfit') : format.weekday(day)
  return (
    <section className={day === today ? 'sheet day today' : 'sheet day'} aria-label={title}>
      <header className="day-head">
        <h2>
          {title}
          {day !== null && <span className="soft"> {format.day(day)}</span>}
          {day === today && <span className="tag"> {t('work.today')}</span>}
        </h2>
        <span className="soft">{t('work.daySum', { time: format.hours(minutes) })}</span>
      </header>
      {places.map(({ bench, isAtMothers, tasks }) => (
        <div key={isAtMothers ? 'mothers' : (bench ?? '')} className="day-place">
          <h3 className="day-bench">
            {isAtMothers ? t('work.atMothers') : bench === null ? t('trade.noBench') : names.bench(bench)}
          </h3>
          <ul>
            {routines(tasks).map(group =>
              group.length === 1 ? (
                <TaskRow key={group[0]!.id} task={group[0]!} state={stateOf(group[0]!.id)} />
              ) : (
                <RoutineRow key={group[0]!.id} tasks={group} stateOf={stateOf} />
              ),
            )}
          </ul>
        </div>
      ))}
    </section>
  )
}
