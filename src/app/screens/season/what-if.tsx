import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { PlannedStart } from '../../../planning/index.ts'
import { look } from '../../data/queries.ts'
import { say } from '../../data/say.ts'
import { AskedLong } from '../../parts/asked.tsx'
import { useDone } from '../../parts/done.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { SaidSlider } from '../../parts/said-slider.tsx'
import { weekAfter, weeksBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'

const SHOWN_AT_LEAST = 0.005

/** A start tried in another week, by slider, drag or key, or with another number: what it lacks there and does to the orders, at once. */
export function WhatIf({
  start,
  first,
  weeks,
  tried,
  onTry,
}: {
  readonly start: PlannedStart
  readonly first: string
  readonly weeks: number
  readonly tried: string
  readonly onTry: (week: string) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const [number, setNumber] = useState(start.number)
  const done = useDone()
  const keep = async () => {
    const { kind: kindOfTree, protocol, set } = start
    const body = { kind: 'start-set/1', kindOfTree, protocol, week: tried, number } as const
    const said = await say([
      ...(set?.entry && tried !== start.week
        ? [{ kind: 'struck/1', entry: set.entry, why: t('season.whatIf.setAnew') } as const]
        : []),
      { ...body, insteadOf: set === null ? start.id : set.insteadOf },
    ])
    if (said.kept) done.tell(t('season.whatIf.kept'), said)
  }
  const isTried = tried !== start.week || number !== start.number
  const asked = look.startMoved({ start: start.id, week: tried, number })
  const answer = useQuery({
    ...asked,
    enabled: isTried,
    placeholderData: keepPreviousData,
  })
  const days = format.weekDays(tried)
  const said = format.weekByNumber ? `${t('common.week', { week: format.week(tried) })}, ${days}` : days
  return (
    <div className="what-if stack">
      <h3>{t('season.whatIf.title')}</h3>
      <div className="what-if-asked">
        <SaidSlider
          label={t('season.whatIf.week')}
          said={said}
          to={weeks - 1}
          value={weeksBetween(first, tried)}
          onChange={weeksOn => onTry(weekAfter(first, weeksOn))}
        />
        <NumberAsked
          label={t('season.whatIf.number')}
          value={number}
          least={0}
          isWhole
          onSay={said => said !== null && setNumber(said)}
        />
        <Button
          className="plain"
          isDisabled={!isTried}
          onPress={() => {
            setNumber(start.number)
            onTry(start.week)
          }}
        >
          {t('season.whatIf.back')}
        </Button>
      </div>
      {isTried ? (
        <AskedLong query={answer} of="start moved" what={t('season.whatIf.chances')} asked={asked.queryKey}>
          {({ isOpen, lacks, orders }) => {
            const canBeKept = isOpen && number > 0 && !answer.isPlaceholderData
            const moved = orders
              .filter(({ before, after }) => Math.abs(after - before) >= SHOWN_AT_LEAST)
              .sort((a, b) => a.after - a.before - (b.after - b.before))
            return (
              <div aria-live="polite">
                {!isOpen && <p className="warn">{t('season.whatIf.shut')}</p>}
                {isOpen && lacks.length === 0 && <p>{t('season.whatIf.fits')}</p>}
                {lacks.length > 0 && (
                  <p className="warn">{t('season.whatIf.lacks', { lacks: lacks.map(tell).join('; ') })}</p>
                )}
                {moved.length === 0 && <p>{t('season.whatIf.same')}</p>}
                <ul className="what-if-orders">
                  {moved.map(({ order, before, after }) => (
                    <li key={order}>
                      <Link to="/orders" search={{ order }}>
                        {t('batch.after.chance', {
                          order,
                          before: format.chance(before),
                          after: format.chance(after),
                        })}
                      </Link>
                    </li>
                  ))}
                </ul>
                {canBeKept && (
                  <p>
                    <Button className="deed" onPress={() => void keep()}>
                      {t('season.whatIf.keep')}
                    </Button>
                  </p>
                )}
              </div>
            )
          }}
        </AskedLong>
      ) : (
        <p className="soft small">{t('season.whatIf.hint')}</p>
      )}
      <p className="soft small">{t('season.whatIf.basis')}</p>
    </div>
  )
}
