import { Link } from '@tanstack/react-router'
import { useRef, useState } from 'react'
import { Button } from 'react-aria-components'
import { flushSync } from 'react-dom'
import { useTranslation } from 'react-i18next'
import type { Task } from '../../../planning/index.ts'
import { markOfMethod } from '../../../trade/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { Given } from '../../parts/given.tsx'
import { focusNext } from '../../parts/next-focus.ts'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { NotDone } from './not-done.tsx'
import type { TaskGround } from './task-ground.ts'
import { TickTask } from './tick-task.tsx'

/** One thing to do: what, how many, from where, by whom, how long, and the caution beside it. */
export function TaskRow({
  task,
  ground,
  ofRoutine,
}: {
  readonly task: Task
  readonly ground: TaskGround
  readonly ofRoutine: boolean
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const names = useNames()
  const state = ground.stateOf(task.id)
  const planned = Math.round(task.number)
  const number = ground.numberDone(task.id) ?? planned
  const [ticking, setTicking] = useState(false)
  const row = useRef<HTMLDivElement>(null)
  const leave = () => {
    flushSync(() => setTicking(false))
    row.current?.querySelector<HTMLElement>('.task-tick')?.focus()
  }
  const about = [
    task.from.length > 0 && t('work.from', { from: task.from.map(tell).join('; ') }),
    task.order !== null && t('work.order', { order: task.order }),
    task.person !== null && names.person(task.person),
    task.minutes > 0 && format.hours(task.minutes),
    task.lacks !== null && tell(task.lacks),
  ].filter(Boolean)

  return (
    <div ref={row} className={ofRoutine ? 'task of-routine' : 'task'} data-state={state}>
      <div className="task-line">
        {task.method === null ? (
          <span className="task-dot" aria-hidden="true" />
        ) : (
          <Link to="/methods/$method" params={{ method: task.method }} className="task-method">
            <Mark mark={markOfMethod(task.method)} size={38} />
            <span className="unseen">{t('work.method')}</span>
          </Link>
        )}
        <div className="task-what">
          <p className="strong">
            {tell(task.task)}
            {task.kind !== null && <span className="task-kind"> {names.kind(task.kind)}</span>}
          </p>
          <p className="soft small">
            {about.join(' · ')}
            {task.batch !== null && (
              <>
                {about.length > 0 && ' · '}
                <Link to="/batches/$batch" params={{ batch: task.batch }}>
                  {t('work.batch', {
                    batch: ground.batch(task.batch)?.name ?? task.batch,
                  })}
                </Link>
              </>
            )}
          </p>
        </div>
        {(task.number > 0 || number > 0) && (
          <p className="task-number">
            {format.number(number)}
            {number !== planned && (
              <span className="soft small">{t('work.ofPlanned', { planned: format.number(planned) })}</span>
            )}
          </p>
        )}
        {state === 'stopped' ? (
          <span className="tag warn">{t('common.onHold')}</span>
        ) : state !== 'open' ? (
          <p className="task-done">
            <svg viewBox="0 0 24 24" width={24} height={24} aria-hidden="true">
              <path d="M4 13l5.500 5.500L20 6" />
            </svg>
            <span className={state === 'waiting' ? 'small' : 'unseen'}>
              {t(state === 'waiting' ? 'work.waiting' : 'work.isDone')}
            </span>
            <NotDone tasks={[task.id]} name={tell(task.task)} />
          </p>
        ) : task.kindOfTask === 'count' && task.batch !== null ? (
          <Link
            to="/batches/$batch/count"
            params={{ batch: task.batch }}
            search={{ task: task.id, ...(task.step === null ? {} : { step: task.step }) }}
            className="plain task-tick"
          >
            {t('work.count')}
          </Link>
        ) : (
          !ticking && (
            <Button
              className="plain task-tick"
              onPress={() => setTicking(true)}
              aria-label={t('work.tickLabel', { task: tell(task.task), number: format.number(task.number) })}
            >
              {t('work.tick')}
            </Button>
          )
        )}
      </div>
      {task.caution !== null && state === 'open' && (
        <p className="caution">
          <span className="unseen">{t('work.caution')}: </span>
          <Given says={format.sentence(task.caution)} />
        </p>
      )}
      {ticking && state === 'open' && (
        <TickTask
          task={task}
          ground={ground}
          onKept={() => row.current !== null && focusNext(row.current, '.task-tick')}
          onLeave={leave}
        />
      )}
    </div>
  )
}
