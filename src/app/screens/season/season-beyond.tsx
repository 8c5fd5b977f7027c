import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { SomeOf } from '../../parts/some-of.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { useWeekName } from '../../text/use-week-said.ts'

const MINUTES = 60

/** What the plan plants, buys in, lends and has worked over, week by week. */
export function SeasonBeyond({ plan }: { readonly plan: SeasonPlan }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const tell = useTell()
  const weekSaid = useWeekName()
  /** With its year: what is bought or planted may be for a season two years away. */
  const weekText = (week: string) =>
    t('season.beyond.week', {
      week: weekSaid(week),
      year: week.slice(0, 4),
    })
  const items = [
    ...plan.plantings.map(({ name, material, week, sentence }) => ({
      key: `planted ${name} ${material} ${week}`,
      week,
      says: tell(sentence),
    })),
    ...plan.bought.map(({ kind, week, number }) => ({
      key: `bought ${kind} ${week}`,
      week,
      says: t('season.beyond.bought', {
        number: format.amount(number),
        kind: names.kind(kind),
        week: weekText(week),
      }),
    })),
    ...plan.overtime.map(({ people, week, hours }) => ({
      key: `overtime ${people.join()} ${week}`,
      week,
      says: t('season.beyond.overtime', {
        people: format.list(people.map(names.person)),
        time: format.hours(hours * MINUTES),
        week: weekText(week),
      }),
    })),
    ...plan.extraArea.map(({ place, week, squareMetres }) => ({
      key: `lent ${place} ${week}`,
      week,
      says: t('season.beyond.place', {
        place: t(`trade.place.${place}`),
        area: format.area(squareMetres),
        week: weekText(week),
      }),
    })),
  ].sort((a, b) => (a.week < b.week ? -1 : a.week > b.week ? 1 : 0))
  return (
    <section className="sheet">
      <h2>{t('season.beyond.title')}</h2>
      {items.length === 0 ? <p className="soft">{t('season.beyond.none')}</p> : <SomeOf items={items} />}
    </section>
  )
}
