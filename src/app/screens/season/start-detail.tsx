import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import type { PlannedStart } from '../../../planning/index.ts'
import { type Material, markOfMethod } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { strike } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { useDone } from '../../parts/done.tsx'
import { useInSight } from '../../parts/use-in-sight.ts'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekName } from '../../text/use-week-said.ts'
import { useDiscInSight } from './use-disc-in-sight.ts'
import { WhatIf } from './what-if.tsx'

/** One start of the plan: how many, from what, where, by whom, and for whom. */
export function StartDetail({
  plan,
  start,
  tried,
  onTry,
  onClose,
}: {
  readonly plan: SeasonPlan
  readonly start: PlannedStart
  readonly tried: string
  readonly onTry: (week: string) => void
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const { data: mothers } = useQuery(look.mothers())
  const { data: batches } = useQuery(look.batchesAlive())
  const weekText = useWeekName()
  const place = useInSight<HTMLElement>(start.id)
  useDiscInSight(start.id, place)
  const toOrders = start.orders.reduce((sum, { number }) => sum + number, 0)

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape puts it away, as its button does
    <section
      ref={place}
      className="sheet start-detail"
      aria-live="polite"
      onKeyDown={event => event.key === 'Escape' && onClose()}
    >
      <Mark mark={markOfMethod(start.method)} size={56} />
      <div className="stack">
        <div className="page-head">
          <div>
            <h2 data-names-page>
              {t('season.start.title', { number: format.number(start.number), kind: names.kind(start.kind) })}
            </h2>
            <p>
              {names.protocol(start.protocol)} ·{' '}
              <b>
                {format.weekByNumber
                  ? t('season.start.when', { week: weekText(start.week), days: format.weekDays(start.week) })
                  : format.weekDays(start.week)}
              </b>
              {start.bench !== null && ` · ${t('season.start.bench', { bench: names.bench(start.bench) })}`}
            </p>
          </div>
          <Button className="quiet" onPress={onClose}>
            {t('common.close')}
          </Button>
        </div>
        <dl className="facts">
          {(start.mothers.length > 0 || start.rootstocks.length > 0) && (
            <div>
              <dt>{t('season.start.from')}</dt>
              {start.mothers.map(({ mother, material, number }) => (
                <dd key={`${mother} ${material}`}>
                  {t('season.start.mother', {
                    number: format.amount(number),
                    material: t(`trade.material.${material as Material}`),
                    mother: mothers?.find(row => row.mother.id === mother)?.mother.name ?? mother,
                  })}
                </dd>
              ))}
              {start.rootstocks.map(({ kind, batch, start: from, number }) => {
                const week = plan.starts.find(({ id }) => id === from)?.week
                return (
                  <dd key={`${kind} ${batch} ${from}`}>
                    {batch !== null
                      ? t('season.start.rootstockBatch', {
                          number: format.number(number),
                          batch: batches?.find(row => row.id === batch)?.name ?? batch,
                        })
                      : week !== undefined
                        ? t('season.start.rootstockStart', {
                            number: format.number(number),
                            week: weekText(week),
                          })
                        : t('season.start.rootstockKind', {
                            number: format.number(number),
                            kind: names.kind(kind),
                          })}
                  </dd>
                )
              })}
            </div>
          )}
          {start.people.length > 0 && (
            <div>
              <dt>{t('season.start.people')}</dt>
              {start.people.map(({ person, skill, minutes }) => (
                <dd key={`${person} ${skill}`}>
                  {t('season.start.person', {
                    person: names.person(person),
                    time: format.hours(minutes),
                    skill: t(`trade.skill.${skill}`).toLowerCase(),
                  })}
                </dd>
              ))}
            </div>
          )}
          {(start.orders.length > 0 || start.forStarts.length > 0) && (
            <div>
              <dt>{t('season.start.orders')}</dt>
              {start.orders.map(({ order, number }) => (
                <dd key={order}>
                  <Link to="/orders" search={{ order }}>
                    {t('season.start.order', { number: format.number(number), order })}
                  </Link>
                </dd>
              ))}
              {start.forStarts.length > 0 && (
                <dd>
                  {t('season.start.forStarts', {
                    count: start.forStarts.length,
                    shown: format.number(start.forStarts.length),
                  })}
                </dd>
              )}
              {toOrders > 0 && toOrders < start.number && <dd className="soft">{t('season.start.cover')}</dd>}
            </div>
          )}
        </dl>
        <p className="soft small">{t('season.start.cost', { cost: format.money(start.cost) })}</p>
        {start.set?.entry && <SetByHand entry={start.set.entry} />}
        <WhatIf
          key={start.id}
          start={start}
          first={plan.firstWeek}
          weeks={plan.weeks}
          tried={tried}
          onTry={onTry}
        />
      </div>
    </section>
  )
}

/** That the planner leaves this start alone, and how to give it back. */
function SetByHand({ entry }: { readonly entry: string }) {
  const { t } = useTranslation()
  const done = useDone()
  const release = async () => {
    const said = await strike([entry], t('season.start.released'))
    if (said.kept) done.tell(t('season.start.releasedDone'), said)
  }
  return (
    <p className="row">
      <b>{t('season.start.set')}</b>
      <Button className="plain" onPress={() => void release()}>
        {t('season.start.release')}
      </Button>
    </p>
  )
}
