import { getRouteApi, Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { type AssumptionKey, treeFigures } from '../../../advice/index.ts'
import { citation, factsOf, type Species, sourceById, type TextFact } from '../../../trade/facts/index.ts'
import type { Figure, Hemisphere } from '../../../trade/index.ts'
import { strike } from '../../data/say.ts'
import { useFruits } from '../../data/use-fruits.ts'
import { useNames } from '../../data/use-names.tsx'
import { Fetching } from '../../parts/asked.tsx'
import { useDone } from '../../parts/done.tsx'
import { useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'
import '../methods/methods.css'
import './species.css'
import { useTerm } from '../../text/use-term.ts'
import { AddMethod } from './add-method.tsx'
import { FactTable } from './fact-table.tsx'
import { Statement } from './statement.tsx'
import { WayFacts } from './way-facts.tsx'

const route = getRouteApi('/species/$species')

/** One fruit: everything that is assumed of it, where it comes from, and what the nursery states instead. */
export function OneSpeciesScreen() {
  const { t } = useTranslation()
  const { species: id } = route.useParams()
  const { nursery } = useNames()
  const fruits = useFruits()
  if (nursery === undefined) return <Fetching what={t('species.title')} />
  const species = fruits.byId(id)
  return (
    <div className="stack">
      <p className="not-printed">
        <Link to="/species">{t('species.all')}</Link>
      </p>
      {species === undefined ? (
        <h1>{t('species.missing')}</h1>
      ) : (
        <SpeciesPage species={species} given={fruits.asGiven(id)!} />
      )}
    </div>
  )
}

/** What which tree assumes of a fruit that has no figure of its own: that of its group. */
function assumedOf(species: Species, key: string, note: string): Figure | null {
  const figure = treeFigures(species)[key.slice('orchard.'.length) as AssumptionKey]
  return key.startsWith('orchard.') && figure !== undefined
    ? { ...figure, note: [note, figure.note].filter(Boolean).join('; ') }
    : null
}

/** Every source named anywhere in a value, in the order in which it is met. */
const sourcesIn = (value: unknown): string[] => {
  if (typeof value !== 'object' || value === null) return []
  const { sources, source } = value as { sources?: unknown; source?: unknown }
  return [
    ...(Array.isArray(sources) ? (sources as string[]) : []),
    ...(typeof source === 'string' ? [source] : []),
    ...Object.entries(value).flatMap(([key, part]) => (key === 'sources' ? [] : sourcesIn(part))),
  ]
}

function SpeciesPage({ species, given }: { readonly species: Species; readonly given: Species }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const done = useDone()
  const { nursery } = useNames()
  const [opened, open] = useOpened()
  const sources = [...new Set(sourcesIn(given))]
  const hemisphere: Hemisphere = (nursery?.site?.latitudeDegrees ?? 1) < 0 ? 'south' : 'north'
  const sets = new Map(
    nursery?.factSets.filter(set => set.species === species.id).map(set => [set.set.fact, set] as const),
  )
  const added = nursery?.speciesSets.find(one => one.species.id === species.id)
  const builtIn = new Map(factsOf(given).map(fact => [fact.key, fact]))
  // Of a method that the nursery added nothing is built in.
  const facts = factsOf(species)
    .map(fact => builtIn.get(fact.key) ?? { ...fact, value: null })
    .map(fact => ({ ...fact, value: fact.value ?? assumedOf(given, fact.key, t('species.facts.assumed')) }))
  const table = (prefix: string, label: string) => (
    <FactTable
      species={species}
      facts={facts.filter(({ key }) => key.startsWith(prefix))}
      sets={sets}
      sources={sources}
      hemisphere={hemisphere}
      label={label}
    />
  )
  const statement = (said: TextFact) => <Statement said={said} sources={sources} />
  const { reproduction, seed, rootstocks, hazards } = species
  const strikeFruit = async () => {
    const said = await strike([added!.entry], t('species.add.strike'))
    done.tell(t('species.add.struck', { fruit: term(species.commonName) }), said)
  }
  return (
    <article className="stack">
      <div className="page-head">
        <div>
          <h1>{term(species.commonName)}</h1>
          <p>
            <em>{species.botanical}</em>, {species.family}.{' '}
            {species.climates.map(climate => t(`species.climates.${climate}`)).join(', ')},{' '}
            {t(
              `species.evergreen.${species.evergreen === 'semi' ? 'semi' : species.evergreen ? 'yes' : 'no'}`,
            )}
            .
          </p>
          {added !== undefined && (
            <p className="small">
              {t('species.add.described', { day: format.fullDay(added.on), why: added.why })}{' '}
              <Button className="quiet" onPress={() => void strikeFruit()}>
                {t('species.add.strike')}
              </Button>
            </p>
          )}
        </div>
        <div className="row">
          <Link to="/which-tree" search={{ fruit: species.id }} className="plain">
            {t('species.links.whichTree')}
          </Link>
          <Link to="/which-tree" search={{ fruit: species.id, view: 'nursery' }} className="plain">
            {t('species.links.whichWay')}
          </Link>
          <Link to="/year" search={{ species: species.id }} className="plain">
            {t('species.links.year')}
          </Link>
        </div>
      </div>
      {hazards.length > 0 && (
        <section aria-label={t('species.groups.hazards')} className="method-cautions">
          {hazards.map(hazard => (
            <div key={hazard.text} className="caution">
              {statement(hazard)}
            </div>
          ))}
          <p className="caution strong">{t('trade.safety')}</p>
        </section>
      )}
      <section className="sheet stack">
        <h2>{t('species.groups.orchard')}</h2>
        {table('orchard.', t('species.groups.orchard'))}
      </section>
      <section className="sheet stack">
        <h2>{t('species.groups.reproduction')}</h2>
        {statement(reproduction.account)}
        {statement(reproduction.pollination)}
        {facts.some(({ key }) => key.startsWith('reproduction.')) &&
          table('reproduction.', t('species.groups.reproduction'))}
        {seed !== null && (
          <>
            <h3>{t('species.groups.seed')}</h3>
            {statement({
              ...seed.storageClass,
              text: t('species.storage', { kind: seed.storageClass.text }),
            })}
            {statement(seed.pretreatment)}
            {table('seed.', t('species.groups.seed'))}
          </>
        )}
      </section>
      <section className="sheet stack">
        <h2>{t('species.groups.stocks')}</h2>
        {statement(rootstocks.usual)}
        {statement(rootstocks.compatibility)}
        {facts.some(({ key }) => key.startsWith('rootstocks.')) &&
          table('rootstocks.', t('species.groups.stocks'))}
      </section>
      {species.ways.map(way => (
        <WayFacts key={way.method} species={species} given={given} way={way} sources={sources}>
          {table(`ways.${way.method}.`, way.method)}
        </WayFacts>
      ))}
      <p>
        <Button className="plain" onPress={() => open('add')}>
          {t('species.method.open')}
        </Button>
      </p>
      {sources.length > 0 && (
        <section className="sheet stack">
          <h2>{t('species.groups.sources')}</h2>
          <ol className="method-sources small">
            {sources.map(source => {
              const known = sourceById(source)
              return <li key={source}>{known === undefined ? source : citation(known)}</li>
            })}
          </ol>
        </section>
      )}
      {opened === 'add' && <AddMethod species={species} onClose={() => open(null)} />}
    </article>
  )
}
