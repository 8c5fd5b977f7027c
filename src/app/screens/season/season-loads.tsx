import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import { Choices } from '../../parts/choices.tsx'
import { fullest } from '../../pictures/load/load-layout.ts'
import { LoadPicture } from '../../pictures/load/load-picture.tsx'
import { weekAfter } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { CapacityWhatIf } from './capacity-what-if.tsx'

const WHAT = ['place', 'skill', 'mother'] as const
const SHOWN_AT_FIRST = 8

/** With more, or less, in every week in which there is any. */
const withMore = (capacity: readonly number[], more: number): readonly number[] =>
  capacity.map(can => (can > 0 ? Math.max(0, can + more) : can))

/** What the plan asks of every bench, hand and mother tree, the fullest first. */
export function SeasonLoads({ plan }: { readonly plan: SeasonPlan }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [what, setWhat] = useState<(typeof WHAT)[number]>('place')
  const [all, setAll] = useState(false)
  const [tried, setTried] = useState<{ id: string; more: number } | null>(null)
  const loads = plan.loads
    .filter(load => load.what === what)
    .map(load => ({ load, full: fullest(load) }))
    .sort((a, b) => b.full.share - a.full.share)
  const used = loads.filter(({ full }) => full.share > 0)
  const shown = all ? used : used.slice(0, SHOWN_AT_FIRST)

  const says = ({ index, share, weeksOver }: ReturnType<typeof fullest>): string => {
    const week = weekAfter(plan.firstWeek, index)
    const said = format.weekByNumber ? t('common.week', { week: format.week(week) }) : format.week(week)
    return weeksOver > 0
      ? t('season.loadOver', { count: weeksOver, shown: format.number(weeksOver), week: said })
      : t('season.loadSays', { week: said, share: format.share(share) })
  }

  return (
    <section className="sheet stack">
      <div className="page-head">
        <div>
          <h2>{t('season.loads')}</h2>
          <p className="soft small">{t('season.loadsSays')}</p>
        </div>
        <Choices
          label={t('season.loads')}
          value={what}
          options={WHAT.map(id => ({ id, name: t(`season.load.${id}`) }))}
          onPick={id => {
            setWhat(id)
            setAll(false)
            setTried(null)
          }}
        />
      </div>
      <div className="loads">
        {shown.map(({ load, full }) => {
          const isArea = load.unit === 'm²'
          const inUnits = (values: readonly number[]) => (isArea ? values.map(format.areaNumber) : values)
          const unit = isArea ? format.areaUnit : t(`season.units.${load.unit}`)
          return (
            <div key={load.id} className="stack">
              <LoadPicture
                title={`${load.name}, ${unit}`}
                says={says(full)}
                unit={unit}
                first={plan.firstWeek}
                series={{
                  expected: inUnits(load.expected),
                  badYear: inUnits(load.badYear),
                  capacity: inUnits(load.capacity),
                  ...(tried?.id === load.id && { tried: inUnits(withMore(load.capacity, tried.more)) }),
                }}
              />
              {load.what !== 'mother' && (
                <p>
                  <Button
                    className="quiet"
                    aria-expanded={tried?.id === load.id}
                    onPress={() => setTried(tried?.id === load.id ? null : { id: load.id, more: 0 })}
                  >
                    {t(tried?.id === load.id ? 'suppose.close' : 'suppose.open')}
                  </Button>
                </p>
              )}
              {tried?.id === load.id && load.what !== 'mother' && (
                <CapacityWhatIf
                  of={load.what}
                  id={load.id}
                  onTry={more => setTried({ id: load.id, more })}
                  onClose={() => setTried(null)}
                />
              )}
            </div>
          )
        })}
      </div>
      {used.length > shown.length && (
        <p>
          <Button className="plain" onPress={() => setAll(true)}>
            {t('season.loadMore', { shown: format.number(used.length) })}
          </Button>
        </p>
      )}
    </section>
  )
}
