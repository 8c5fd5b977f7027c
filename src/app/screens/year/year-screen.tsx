import { getRouteApi, Link } from '@tanstack/react-router'
import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { monthsAtPlace } from '../../../advice/index.ts'
import { starterProtocols } from '../../../trade/facts/index.ts'
import { markOfMethod, windowKind, windowMonths } from '../../../trade/index.ts'
import { useFruits } from '../../data/use-fruits.ts'
import { useNames } from '../../data/use-names.tsx'
import { Fetching } from '../../parts/asked.tsx'
import { Given } from '../../parts/given.tsx'
import { Pick } from '../../parts/pick.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { type WindowNow, windowNow } from '../../pictures/window-weeks.ts'
import { WheelPicture, type WheelRing } from '../../pictures/year-wheel/wheel-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekSaid } from '../../text/use-week-said.ts'
import './year.css'
import { useTerm } from '../../text/use-term.ts'

const route = getRouteApi('/year')

/** When each way may begin at this site, and what may begin now. */
export function YearScreen() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const weekSaid = useWeekSaid()
  const { nursery } = useNames()
  const known = useFruits()
  const { species = '' } = route.useSearch()
  const navigate = route.useNavigate()
  const fruits = useMemo(() => {
    const bySpecies = new Map<string, Set<string>>()
    for (const kind of nursery?.kinds ?? [])
      for (const way of kind.ways)
        bySpecies.set(kind.species, (bySpecies.get(kind.species) ?? new Set()).add(way.protocol))
    return bySpecies
  }, [nursery])
  if (nursery === undefined) return <Fetching what={t('year.title')} />

  const wanted =
    species === ''
      ? new Set([...fruits.values()].flatMap(ids => [...ids]))
      : (fruits.get(species) ?? new Set())
  const inUse = nursery.protocols.filter(({ id }) => wanted.has(id))
  const fruit = known.byId(species)
  const { site } = nursery
  // The site knows where it lies, and no temperatures.
  const warmth = site === null ? null : monthsAtPlace(site.latitudeDegrees, site.heightMetres)
  const hemisphere = (nursery.site?.latitudeDegrees ?? 0) < 0 ? 'south' : 'north'
  // Of a fruit that is not made here yet, the ways of the facts.
  const rings: readonly WheelRing[] =
    inUse.length > 0 || fruit === undefined
      ? inUse
      : starterProtocols(fruit).map(({ id, name, method, window }) => ({
          id,
          name: term(name),
          method,
          window: {
            condition: window.condition,
            basis: window.basis,
            months: [...windowMonths(window, hemisphere)],
          },
        }))
  const isOfFacts = inUse.length === 0 && rings.length > 0
  const protocols = [...rings].sort(
    (a, b) =>
      windowKind(a.method).localeCompare(windowKind(b.method)) ||
      markOfMethod(a.method).localeCompare(markOfMethod(b.method)) ||
      a.name.localeCompare(b.name),
  )
  const all = protocols.map(protocol => ({ protocol, now: windowNow(protocol.window.months, nursery.today) }))
  const open = all.filter(({ now }) => now.isOpen)
  const later = all
    .flatMap(({ protocol, now }) => (now.isOpen ? [] : [{ protocol, now }]))
    .sort((a, b) => a.now.weeks - b.now.weeks)
  const stands = (now: WindowNow): string => {
    if (!now.isOpen)
      return t('year.opensIn', {
        count: now.weeks,
        shown: format.number(now.weeks),
        day: format.day(now.opens),
      })
    if (now.closes === null) return t('year.neverCloses')
    if (now.weeks === 0) return t('year.lastWeek', { day: format.day(now.closes) })
    return t('year.openFor', {
      count: now.weeks,
      shown: format.number(now.weeks),
      day: format.day(now.closes),
    })
  }
  const fruitName = (id: string) => term(known.byId(id)?.commonName ?? id)

  const line = ({ protocol, now }: { readonly protocol: WheelRing; readonly now: WindowNow }) => (
    <li key={protocol.id}>
      <Mark mark={markOfMethod(protocol.method)} size={28} />
      <div>
        <p className="strong">
          {isOfFacts ? (
            protocol.name
          ) : (
            <Link to="/protocols/$protocol" params={{ protocol: protocol.id }}>
              {protocol.name}
            </Link>
          )}
        </p>
        <p className="small">
          {stands(now)} {t(`year.kinds.${windowKind(protocol.method)}`)}.
        </p>
        <p className="soft small">
          {protocol.window.months.length === 12
            ? t('year.always')
            : protocol.window.months.length === 0
              ? t('year.never')
              : format.months(protocol.window.months)}
          . {t('year.condition')} <Given says={format.sentence(protocol.window.condition)} />.{' '}
          {t('year.basis', { basis: term(protocol.window.basis) })}.
        </p>
      </div>
    </li>
  )
  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('year.title')}</h1>
          <p className="soft">{t(isOfFacts ? 'year.saysOfFacts' : 'year.says')}</p>
        </div>
        <Pick
          label={t('year.fruit')}
          value={species}
          options={[
            { id: '', name: t('year.allFruits') },
            ...[...fruits.keys()]
              .map(id => ({ id, name: fruitName(id) }))
              .sort((a, b) => a.name.localeCompare(b.name)),
            ...known.all
              .filter(({ id }) => !fruits.has(id))
              .map(({ id }) => ({ id: id as string, name: t('year.notMade', { fruit: fruitName(id) }) }))
              .sort((a, b) => a.name.localeCompare(b.name)),
          ]}
          onPick={id => void navigate({ search: { species: id || undefined } })}
        />
      </div>
      {protocols.length === 0 ? (
        <p className="soft">{t('year.none')}</p>
      ) : (
        <div className="year-columns">
          <WheelPicture
            title={species === '' ? t('year.wheel') : fruitName(species)}
            says={t('year.rings')}
            protocols={protocols}
            today={nursery.today}
            warmth={warmth?.meansCelsius ?? null}
          />
          <div className="stack">
            <p className="soft small">
              {warmth === null
                ? t('year.warmth.none')
                : t('year.warmth.basis', {
                    error: format.amount(format.shown('± °C').to(warmth.errorCelsius)),
                  })}
            </p>
            <section>
              <h2>{t('year.now')}</h2>
              <p className="soft">{`${format.weekDays(nursery.week)}, ${weekSaid(nursery.week)}. ${t('year.byThursday')}`}</p>
              <ul className="year-list">
                {open.length === 0 ? <li className="soft">{t('year.nothingNow')}</li> : open.map(line)}
              </ul>
            </section>
            {later.length > 0 && (
              <section>
                <h2>{t('year.later')}</h2>
                <ul className="year-list">{later.map(line)}</ul>
              </section>
            )}
          </div>
        </div>
      )}
    </div>
  )
}
