import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { SomeOf } from '../../parts/some-of.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { useWeekSaid } from '../../text/use-week-said.ts'
import { useSayFull } from '../benches/use-say-full.ts'
import { useSaySlump } from '../rates/use-say-slump.ts'

/** What goes worse than it should, or will: each in one sentence with its numbers, and the way to it. */
export function Watched() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const weekSaid = useWeekSaid()
  const sayFull = useSayFull()
  const saySlump = useSaySlump()
  const { data, isError } = useQuery(look.needsLook())
  if (data === undefined)
    return (
      <output className="soft small">{t(isError ? 'work.watched.notLooked' : 'work.watched.looking')}</output>
    )
  const { late, poor, slumps, stale, full, fullBenches } = data
  const groups = [
    {
      title: t('work.watched.slumps'),
      items: slumps.map(one => ({
        key: JSON.stringify(one.of),
        says: (
          <Link to="/rates" search={{ view: 'slumps' }}>
            {t('work.watched.slump', { of: saySlump.of(one), says: saySlump.says(one) })}
          </Link>
        ),
      })),
    },
    {
      title: t('work.watched.poorTakes'),
      items: poor.map(one => ({
        key: `${one.batch} ${one.stepName}`,
        says: (
          <Link to="/batches/$batch" params={{ batch: one.batch }}>
            {t('work.watched.poor', {
              batch: one.name,
              kind: one.kindName,
              taken: format.number(one.taken),
              counted: format.number(one.counted),
              expected: format.share(one.expectedShare),
            })}
          </Link>
        ),
      })),
    },
    {
      title: t('work.watched.lateBatches'),
      items: late.map(one => ({
        key: `${one.batch} ${one.stepName}`,
        says: (
          <Link to="/batches/$batch" params={{ batch: one.batch }}>
            {t('work.watched.late', {
              batch: one.name,
              kind: one.kindName,
              step: term(one.stepName),
              days: format.number(one.days),
              usual: format.number(one.usualDays),
              most: format.number(one.mostDays),
            })}
          </Link>
        ),
      })),
    },
    {
      title: t('work.watched.fullPlaces'),
      items: full.map(({ place, week, squareMetres, capacity }) => ({
        key: place,
        says: (
          <Link to="/benches" search={{ week }}>
            {t('work.watched.full', {
              place: t(`trade.place.${place}`),
              week: weekSaid(week),
              load: format.area(squareMetres),
              capacity: format.area(capacity),
            })}
          </Link>
        ),
      })),
    },
    {
      title: t('work.watched.fullBenches'),
      items: fullBenches.map(one => ({
        key: one.bench,
        says: (
          <Link to="/benches" search={{ week: one.week, bench: one.bench }}>
            {sayFull(one)}
          </Link>
        ),
      })),
    },
    {
      title: t('work.watched.staleWood'),
      items: stale.map(({ lot, mother, motherName, material, left, goodUntil, daysLeft }) => ({
        key: lot,
        says: (
          <Link to="/mothers" search={{ mother }}>
            {t(daysLeft < 0 ? 'work.watched.past' : 'work.watched.soon', {
              left: format.amount(left),
              material: t(`trade.material.${material}`).toLowerCase(),
              mother: motherName,
              day: format.day(goodUntil),
            })}
          </Link>
        ),
      })),
    },
  ].filter(({ items }) => items.length > 0)
  return groups.map(({ title, items }) => (
    <section key={title} className="watched">
      <h3>{title}</h3>
      <SomeOf items={items} />
    </section>
  ))
}
