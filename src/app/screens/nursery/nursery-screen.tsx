import { Link } from '@tanstack/react-router'
import { type ReactNode, useId } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { NurseryView } from '../../../api/index.ts'
import { useJob } from '../../data/use-job.ts'
import { useNames } from '../../data/use-names.tsx'
import { Fetching } from '../../parts/asked.tsx'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'
import { BatchForm } from './batch-form.tsx'
import { BenchForm } from './bench-form.tsx'
import { CultivarForm } from './cultivar-form.tsx'
import { notOver } from './days.ts'
import { KindForm } from './kind-form.tsx'
import { MotherForm } from './mother-form.tsx'
import { PersonForm } from './person-form.tsx'
import { placesLacking } from './places-lacking.ts'
import { PricesForm } from './prices-form.tsx'
import { RegisterSection } from './register-section.tsx'
import { SiteForm } from './site-form.tsx'
import './nursery.css'

/** The nursery typed in, step by step: where, what is grown, on what, by whom, what stands there, what is ordered. */
export function NurseryScreen() {
  const { t } = useTranslation()
  const { nursery } = useNames()
  if (nursery === undefined) return <Fetching what={t('nursery.title')} />
  return (
    <div className="stack nursery">
      <div className="page-head">
        <div>
          <h1>{t('nursery.title')}</h1>
          <p className="soft">{t('nursery.says')}</p>
        </div>
        <Link to="/import" className="plain">
          {t('nursery.bring')}
        </Link>
      </div>
      <Where nursery={nursery} />
      <Grown nursery={nursery} />
      <Places nursery={nursery} />
      <People nursery={nursery} />
      <Standing nursery={nursery} />
      <ToPlan nursery={nursery} />
      <Costs nursery={nursery} />
    </div>
  )
}

interface OfNursery {
  readonly nursery: NurseryView
}

/** One step that is no list: a heading, what there is, and what can be done. */
function Part({
  step,
  isDone,
  title,
  says,
  children,
}: {
  readonly step: number | null
  readonly isDone: boolean
  readonly title: string
  readonly says: string
  readonly children: ReactNode
}) {
  const format = useFormat()
  const id = useId()
  return (
    <section className="sheet stack" aria-labelledby={id}>
      <div>
        <h2 id={id}>
          {step !== null && (
            <span className="step" data-done={isDone || undefined}>
              {format.number(step)}
            </span>
          )}{' '}
          {title}
        </h2>
        <p className="soft small">{says}</p>
      </div>
      {children}
    </section>
  )
}

function Where({ nursery: { site } }: OfNursery) {
  const { t } = useTranslation()
  const format = useFormat()
  const [opened, open] = useOpened()
  return (
    <Part
      step={1}
      isDone={site !== null}
      title={t('nursery.site.heading')}
      says={
        site === null
          ? t('nursery.site.says')
          : t('settings.site', {
              name: site.name,
              latitude: format.amount(site.latitudeDegrees),
              longitude: format.amount(site.longitudeDegrees),
              height: format.length(site.heightMetres),
            })
      }
    >
      <div className="row">
        <Button className="plain" onPress={() => open('site')}>
          {t(site === null ? 'nursery.site.set' : 'nursery.site.change')}
        </Button>
      </div>
      {opened === 'site' && <SiteForm site={site} onClose={() => open(null)} />}
    </Part>
  )
}

function Grown({ nursery: { kinds, cultivars } }: OfNursery) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const [opened, open] = useOpened()
  const cultivar = cultivars.find(({ id }) => id === openedOf(opened, 'cultivar'))
  return (
    <>
      <RegisterSection
        name="kind"
        step={2}
        title={t('nursery.kind.heading')}
        says={t('nursery.kind.says')}
        add={t('nursery.kind.add')}
        lines={kinds.map(({ id, name, size, price, ways }) => ({
          id,
          name,
          says: t('nursery.kind.line', {
            size: size === '' ? '' : `${size}, `,
            price: format.amount(price),
            ways: format.list(ways.map(({ protocol }) => names.protocol(protocol))),
          }),
          retired: why => ({ kind: 'kind-dropped/1', kindOfTree: id, why }),
        }))}
        form={(id, close) => <KindForm kind={kinds.find(one => one.id === id) ?? null} onClose={close} />}
      />
      {cultivars.length > 0 && (
        <details className="sheet" open={cultivar !== undefined || undefined}>
          <summary>
            {t('nursery.cultivar.heading')} ({format.number(cultivars.length)})
          </summary>
          <ul className="register">
            {cultivars.map(({ id, name, licence }) => (
              <li key={id}>
                <span>
                  {name}{' '}
                  {licence !== null && (
                    <span className="soft">{t('nursery.cultivar.protected', { owner: licence.owner })}</span>
                  )}
                </span>
                <Button
                  className="quiet"
                  aria-label={t('nursery.changeOf', { name })}
                  onPress={() => open(`cultivar ${id}`)}
                >
                  {t('nursery.change')}
                </Button>
              </li>
            ))}
          </ul>
          {cultivar !== undefined && <CultivarForm cultivar={cultivar} onClose={() => open(null)} />}
        </details>
      )}
    </>
  )
}

function Places({ nursery }: OfNursery) {
  const { t } = useTranslation()
  const format = useFormat()
  const lacking = placesLacking(nursery)
  return (
    <RegisterSection
      name="bench"
      step={3}
      title={t('settings.places')}
      says={
        lacking.length === 0
          ? t('nursery.bench.says')
          : t('nursery.bench.lacking', {
              places: format.list(lacking.map(place => t(`trade.place.${place}`).toLowerCase())),
            })
      }
      add={t('nursery.bench.add')}
      lines={nursery.benches.map(({ id, name, place, areaSquareMetres, closed }) => ({
        id,
        name,
        says: [
          `${t(`trade.place.${place}`).toLowerCase()}, ${format.area(areaSquareMetres)}`,
          ...notOver(closed, nursery.today).map(({ from, to, areaSquareMetres: part, why }) => {
            const days = format.fullDays(from, to)
            const said =
              part < areaSquareMetres
                ? t('nursery.bench.closedPart', { area: format.area(part), days })
                : t('nursery.bench.closedLine', { days })
            return why === '' ? said : `${said} (${why})`
          }),
        ].join('; '),
        retired: why => ({ kind: 'bench-removed/1', bench: id, why }),
      }))}
      form={(id, close) => (
        <BenchForm bench={nursery.benches.find(one => one.id === id) ?? null} onClose={close} />
      )}
    />
  )
}

function People({ nursery: { people, today } }: OfNursery) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <div id="people">
      <RegisterSection
        name="person"
        step={4}
        title={t('settings.people')}
        says={t('nursery.person.says')}
        add={t('nursery.person.add')}
        lines={people.map(({ id, name, skills, hoursPerWeek, away }) => ({
          id,
          name,
          says: [
            t('nursery.person.line', {
              skills: format.list(skills.map(skill => t(`trade.skill.${skill}`).toLowerCase())),
              hours: format.number(hoursPerWeek),
            }),
            ...notOver(away, today).map(({ from, to }) =>
              t('nursery.person.awayLine', { days: format.fullDays(from, to) }),
            ),
          ].join('; '),
          retired: () => ({ kind: 'person-left/1', person: id }),
        }))}
        form={(id, close) => (
          <PersonForm person={people.find(one => one.id === id) ?? null} onClose={close} />
        )}
      />
    </div>
  )
}

function Standing({ nursery: { counts } }: OfNursery) {
  const { t } = useTranslation()
  const format = useFormat()
  const [opened, open] = useOpened()
  return (
    <Part
      step={5}
      isDone={counts.mothers + counts.batches > 0}
      title={t('nursery.standing.heading')}
      says={t('nursery.standing.says')}
    >
      {counts.mothers + counts.batches > 0 && (
        <p>
          <Link to="/mothers">
            {t('nursery.standing.mothers', { count: counts.mothers, shown: format.number(counts.mothers) })}
          </Link>
          {', '}
          <Link to="/batches">
            {t('common.batches', { count: counts.batches, shown: format.number(counts.batches) })}
          </Link>
        </p>
      )}
      <div className="row">
        <Button className="plain" onPress={() => open('mother')}>
          {t('nursery.mother.add')}
        </Button>
        <Button className="plain" onPress={() => open('batch')}>
          {t('nursery.batch.add')}
        </Button>
      </div>
      {opened === 'mother' && <MotherForm onClose={() => open(null)} />}
      {opened === 'batch' && <BatchForm onClose={() => open(null)} />}
    </Part>
  )
}

function ToPlan({ nursery: { counts, kinds } }: OfNursery) {
  const { t } = useTranslation()
  const format = useFormat()
  const { start, running } = useJob()
  return (
    <Part
      step={6}
      isDone={counts.openOrders > 0}
      title={t('nursery.plan.heading')}
      says={
        counts.openOrders > 0
          ? t('nursery.plan.orders', { count: counts.openOrders, shown: format.number(counts.openOrders) })
          : t(kinds.length === 0 ? 'nursery.plan.needKind' : 'nursery.plan.says')
      }
    >
      <div className="row">
        <Link to="/orders/new" className="plain">
          {t('orders.new')}
        </Link>
        <Button className="deed" isDisabled={running || counts.openOrders === 0} onPress={start}>
          {t('season.plan')}
        </Button>
        <Link to="/season" className="plain">
          {t('nursery.plan.look')}
        </Link>
      </div>
    </Part>
  )
}

function Costs({ nursery: { prices } }: OfNursery) {
  const { t } = useTranslation()
  const format = useFormat()
  const [opened, open] = useOpened()
  return (
    <Part
      step={null}
      isDone
      title={t('nursery.prices.title')}
      says={t('nursery.prices.line', {
        hour: format.amount(prices.hour),
        overtime: format.amount(prices.overtimeHour),
        late: format.share(prices.latePerWeekShare),
        short: format.share(prices.shortShare),
      })}
    >
      <div className="row">
        <Button className="plain" onPress={() => open('prices')}>
          {t('nursery.prices.change')}
        </Button>
      </div>
      {opened === 'prices' && <PricesForm prices={prices} onClose={() => open(null)} />}
    </Part>
  )
}
