import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { useTerm } from '../../text/use-term.ts'
import { useWeekSaid } from '../../text/use-week-said.ts'

/** What is due next with a batch, when and for how many, and what says so. */
export function NextOfBatch({
  next,
  steps,
}: {
  readonly next: NonNullable<BatchView['next']>
  readonly steps: BatchView['steps']
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const weekSaid = useWeekSaid()
  const tell = useTell()
  const term = useTerm()
  const { nursery } = useNames()
  const number = format.number(next.number)
  if (next.by === 'plan') {
    const week = weekSaid(next.week)
    return (
      <p>
        <b>{t('batch.next.plan', { task: tell(next.task), number })}</b>{' '}
        <Link to="/work" search={next.week === nursery?.week ? {} : { week: next.week }}>
          {next.day === null ? week : format.weekdayAndDay(next.day)}
        </Link>
      </p>
    )
  }
  const isOver = next.on < (nursery?.today ?? deviceDay())
  return (
    <p>
      {t(isOver ? 'batch.next.over' : 'batch.next.protocol', {
        number,
        step: term(steps.find(({ step }) => step === next.step)?.name ?? next.step),
        day: format.fullDay(next.on),
        days: format.number(next.days),
      })}
    </p>
  )
}
