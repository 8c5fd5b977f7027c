import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import { PlaceKind, Skill } from '../../../trade/index.ts'
import { useNames } from '../../data/use-names.tsx'
import type { fullest } from '../../pictures/load/load-layout.ts'
import { LoadPicture } from '../../pictures/load/load-picture.tsx'
import { weekAfter } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekName } from '../../text/use-week-said.ts'
import { type Able, boundsOf, capacityTried, nameOf } from './capacity-draft.ts'
import { asItIs, type CapacityTried, CapacityWhatIf } from './capacity-what-if.tsx'

/** What one place, skill or mother tree carries; what a place or a skill can is tried by moving its line. */
export function OneLoad({
  load,
  full,
  firstWeek,
  tried,
  onTry,
}: {
  readonly load: SeasonPlan['loads'][number]
  readonly full: ReturnType<typeof fullest>
  readonly firstWeek: string
  readonly tried: CapacityTried | null
  readonly onTry: (tried: CapacityTried | null) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const weekName = useWeekName()
  const names = useNames()
  const isArea = load.unit === 'm²'
  const inUnits = (values: readonly number[]) => (isArea ? values.map(format.areaNumber) : values)
  const unit = isArea ? format.areaUnit : t(`season.units.${load.unit}`)
  const ables = ablesOf(load, names)
  const [first] = ables.keys()
  const moved = tried ?? (first === undefined ? null : asItIs(first, ables.get(first)!))
  const able = moved && ables.get(moved.able)
  const line = tried && able && capacityTried(able, tried.draft, load.capacity, firstWeek)
  const nameOfLoad = () =>
    load.what === 'place'
      ? t(`trade.place.${PlaceKind.parse(load.id)}`)
      : load.what === 'skill'
        ? t(`trade.skill.${Skill.parse(load.id)}`)
        : load.name
  const says = () => {
    const week = weekAfter(firstWeek, full.index)
    const said = weekName(week)
    return full.weeksOver > 0
      ? t('season.loadOver', { count: full.weeksOver, shown: format.number(full.weeksOver), week: said })
      : t('season.loadSays', { week: said, share: format.share(full.share) })
  }

  return (
    <div className="stack">
      <LoadPicture
        title={`${nameOfLoad()}, ${unit}`}
        says={says()}
        unit={unit}
        first={firstWeek}
        series={{
          expected: inUnits(load.expected),
          badYear: inUnits(load.badYear),
          capacity: inUnits(load.capacity),
          ...(line && { tried: inUnits(line) }),
        }}
        {...(moved &&
          able &&
          !(able.what === 'person' && moved.draft.days !== null) && {
            handle: {
              label: nameOf(able),
              says:
                able.what === 'bench'
                  ? format.area(moved.draft.value)
                  : t('suppose.capacity.hoursSaid', { hours: format.amount(moved.draft.value) }),
              value: moved.draft.value,
              rise: able.what === 'bench' ? format.areaNumber(1) : able.person.pace,
              ...boundsOf(able, moved.draft),
              onMove: value => onTry({ ...moved, draft: { ...moved.draft, value } }),
            },
          })}
      />
      {ables.size > 0 && (
        <p>
          <Button
            className="quiet"
            aria-expanded={tried !== null}
            onPress={() => onTry(tried === null ? moved : null)}
          >
            {t(tried === null ? 'suppose.open' : 'suppose.close')}
          </Button>
        </p>
      )}
      {tried && able && (
        <CapacityWhatIf
          ables={ables}
          tried={tried}
          most={boundsOf(able, tried.draft).most}
          onTry={onTry}
          onClose={() => onTry(null)}
        />
      )}
    </div>
  )
}

/** What a place or a skill is made of: benches, people; a mother tree gives what it gives. */
function ablesOf(
  { what, id }: SeasonPlan['loads'][number],
  { benches, people }: ReturnType<typeof useNames>,
): ReadonlyMap<string, Able> {
  if (what === 'place')
    return new Map(
      [...benches.values()]
        .filter(({ place }) => place === id)
        .map(bench => [bench.id as string, { what: 'bench', bench }]),
    )
  if (what === 'skill')
    return new Map(
      [...people.values()]
        .filter(({ skills }) => (skills as readonly string[]).includes(id))
        .map(person => [person.id as string, { what: 'person', person }]),
    )
  return new Map()
}
