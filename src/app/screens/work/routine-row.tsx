import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Task } from '../../../planning/index.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.ts'
import { useDone } from '../../parts/done.tsx'
import { useFormat } from '../../text/use-format.ts'
import { TaskRow, type TaskState } from './task-row.tsx'

/** A round through many batches in one place: ticked as a whole, or one by one. */
export function RoutineRow({
  tasks,
  stateOf,
}: {
  readonly tasks: readonly Task[]
  readonly stateOf: (task: string) => TaskState
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const done = useDone()
  const open = tasks.filter(({ id }) => stateOf(id) === 'open')
  const { task, caution } = tasks[0]!
  const people = [...new Set(tasks.flatMap(({ person }) => (person === null ? [] : [names.person(person)])))]
  const minutes = tasks.reduce((sum, one) => sum + one.minutes, 0)
  const about = [
    t('work.routine', { count: tasks.length, shown: format.number(tasks.length) }),
    ...people,
    ...(minutes > 0 ? [format.hours(minutes)] : []),
  ]
  const tickAll = async () => {
    const said = await say(open.map(({ id }) => ({ kind: 'task-done/1', task: id, minutes: null })))
    done.tell(t('work.routineKept', { task, count: open.length, shown: format.number(open.length) }), said)
  }
  return (
    <li className="task" data-state={open.length === 0 ? 'done' : 'open'}>
      <div className="task-line">
        <span className="task-dot" aria-hidden="true" />
        <div className="task-what">
          <p className="strong">{task}</p>
          <p className="soft small">{about.join(' · ')}</p>
        </div>
        <p className="task-number">{format.number(tasks.reduce((sum, { number }) => sum + number, 0))}</p>
        {open.length > 0 ? (
          <Button
            className="plain task-tick"
            onPress={() => void tickAll()}
            aria-label={t('work.routineTick', { task })}
          >
            {t('work.routineAll')}
          </Button>
        ) : (
          <p className="task-done">
            <svg viewBox="0 0 24 24" width={24} height={24} aria-hidden="true">
              <path d="M4 13l5.500 5.500L20 6" />
            </svg>
            <span className="unseen">{t('work.isDone')}</span>
          </p>
        )}
      </div>
      {caution !== null && open.length > 0 && <p className="caution">{caution}</p>}
      <details className="routine">
        <summary>{t('work.routineOne')}</summary>
        <ul>
          {tasks.map(one => (
            <TaskRow key={one.id} task={one} state={stateOf(one.id)} />
          ))}
        </ul>
      </details>
    </li>
  )
}
