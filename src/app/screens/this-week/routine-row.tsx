import { useRef } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Task } from '../../../planning/index.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { useDone } from '../../parts/done.tsx'
import { Given } from '../../parts/given.tsx'
import { focusNext } from '../../parts/next-focus.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { NotDone } from './not-done.tsx'
import type { TaskGround } from './task-ground.ts'

/** A round through many batches in one place: ticked as a whole, or one by one. */
export function RoutineRow({
  tasks,
  ground: { stateOf, numberDone },
  isOpen,
  onOpen,
}: {
  readonly tasks: readonly Task[]
  readonly ground: TaskGround
  /** Its batches stand below it, one by one. */
  readonly isOpen: boolean
  readonly onOpen: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const names = useNames()
  const done = useDone()
  const row = useRef<HTMLDivElement>(null)
  const open = tasks.filter(({ id }) => stateOf(id) === 'open')
  const { caution } = tasks[0]!
  const task = tell(tasks[0]!.task)
  const people = [...new Set(tasks.flatMap(({ person }) => (person === null ? [] : [names.person(person)])))]
  const minutes = tasks.reduce((sum, one) => sum + one.minutes, 0)
  const about = [
    t('work.routine', { count: tasks.length, shown: format.number(tasks.length) }),
    ...people,
    ...(minutes > 0 ? [format.hours(minutes)] : []),
  ]
  const tickAll = async () => {
    const said = await say(
      open.map(({ id, number }) => ({
        kind: 'task-done/2',
        task: id,
        number: Math.round(number),
        minutes: null,
      })),
    )
    done.tell(t('work.routineKept', { task, count: open.length, shown: format.number(open.length) }), said)
    if (said.kept && row.current !== null) focusNext(row.current, '.task-tick')
  }
  return (
    <div ref={row} className="task" data-state={open.length === 0 ? 'done' : 'open'}>
      <div className="task-line">
        <span className="task-dot" aria-hidden="true" />
        <div className="task-what">
          <p className="strong">{task}</p>
          <p className="soft small">{about.join(' · ')}</p>
        </div>
        <p className="task-number">
          {format.number(tasks.reduce((sum, { id, number }) => sum + (numberDone(id) ?? number), 0))}
        </p>
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
            <NotDone tasks={tasks.map(({ id }) => id)} name={task} />
          </p>
        )}
      </div>
      {caution !== null && open.length > 0 && (
        <p className="caution">
          <Given says={format.sentence(caution)} />
        </p>
      )}
      <Button className="quiet routine-open" aria-expanded={isOpen} onPress={onOpen}>
        {t(isOpen ? 'work.routineShut' : 'work.routineOne')}
      </Button>
    </div>
  )
}
