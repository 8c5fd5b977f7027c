import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { useMemo } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { rowsOf, type WeekWork } from '../../../api/index.ts'
import { useOutbox } from '../../data/outbox/use-outbox.ts'
import { look } from '../../data/queries.ts'
import { useJob } from '../../data/use-job.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import { weekAfter } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import './work.css'
import { DaySheet } from './day-sheet.tsx'
import { FirstRun } from './first-run.tsx'
import { NeedsLook } from './needs-look.tsx'
import { taskGround } from './task-ground.ts'
import { walkingOrder } from './walking-order.ts'

const route = getRouteApi('/work')

/** What to do this week: by day, in walking order, for everyone or one person. */
export function WorkScreen() {
  const { t } = useTranslation()
  const { nursery } = useNames()
  const { week } = route.useSearch()
  // From week to week what was pressed stays, and with it the focus.
  const work = useQuery({ ...look.work(week), placeholderData: keepPreviousData })

  if (nursery !== undefined && nursery.counts.batches === 0 && nursery.counts.openOrders === 0)
    return <FirstRun />
  return (
    <Asked query={work} what={t('shell.screens.work')}>
      {list => <WorkOfWeek list={list} />}
    </Asked>
  )
}

function WorkOfWeek({ list }: { readonly list: WeekWork }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { nursery, benches } = useNames()
  const { person = '', week = nursery?.week ?? list.week } = route.useSearch()
  const navigate = route.useNavigate()
  const { data: planned } = useQuery(look.plan())
  const { waiting, lately } = useOutbox()
  const { start, running } = useJob()
  const all = rowsOf(list.planned.tasks)
  const tasks = useMemo(
    () => (person === '' ? all : all.filter(task => task.person === person)),
    [all, person],
  )
  const days = useMemo(() => walkingOrder(tasks, benches), [tasks, benches])
  const ground = useMemo(
    () =>
      taskGround(
        list,
        lately,
        waiting.map(({ entry }) => entry),
      ),
    [list, lately, waiting],
  )
  const done = tasks.filter(({ id }) => ['done', 'waiting'].includes(ground.stateOf(id))).length
  const go = (week: string | undefined) => void navigate({ search: was => ({ ...was, week }) })
  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1 aria-live="polite">
            {format.weekByNumber
              ? t('work.title', { week: format.week(list.week) })
              : t('work.titleOf', { week: format.week(list.week) })}
          </h1>
          <p className="soft">
            {t('work.days', { days: format.weekDays(list.week) })}{' '}
            {tasks.length > 0 &&
              t('work.sum', {
                count: tasks.length,
                shown: format.number(tasks.length),
                time: format.hours(tasks.reduce((sum, { minutes }) => sum + minutes, 0)),
                done: format.number(done),
              })}{' '}
            {planned?.plan != null && !list.accepted && t('work.notAccepted')}
          </p>
        </div>
        <div className="row">
          <Button className="plain" onPress={() => go(weekAfter(week, -1))}>
            {t('common.previous')}
          </Button>
          {week !== nursery?.week && (
            <Button className="plain" onPress={() => go(undefined)}>
              {t('work.thisWeek')}
            </Button>
          )}
          <Button className="plain" onPress={() => go(weekAfter(week, 1))}>
            {t('common.next')}
          </Button>
          <Pick
            label={t('work.person')}
            isLabelHidden
            value={person}
            options={[
              { id: '', name: t('work.everyone') },
              ...(nursery?.people ?? []).map(({ id, name }) => ({ id: id as string, name })),
            ]}
            onPick={id => void navigate({ search: was => ({ ...was, person: id || undefined }) })}
          />
        </div>
      </div>
      <div className="work-columns">
        <div className="stack">
          {tasks.length === 0 &&
            (planned?.plan === null ? (
              <div className="sheet stack">
                <p>{t(running ? 'work.beingPlanned' : 'work.noPlan')}</p>
                <p>
                  <Button className="deed" onPress={start} isDisabled={running}>
                    {t('season.plan')}
                  </Button>
                </p>
              </div>
            ) : (
              <p className="sheet soft">{t('work.nothing')}</p>
            ))}
          {days.map(day => (
            <DaySheet key={day.day ?? 'any'} day={day} ground={ground} today={nursery?.today ?? ''} />
          ))}
          {tasks.length > 0 && <p className="soft small">{t('trade.safety')}</p>}
        </div>
        <NeedsLook />
      </div>
    </div>
  )
}
