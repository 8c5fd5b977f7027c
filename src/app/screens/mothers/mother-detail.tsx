import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import { Behind } from '../../parts/behind.tsx'
import { EntryList } from '../../parts/entry-list.tsx'
import { HoldList } from '../../parts/hold-list.tsx'
import { LicenceTally } from '../../parts/licence-tally.tsx'
import { useInSight } from '../../parts/use-in-sight.ts'
import { useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { ChangeGives } from './change-gives.tsx'
import { ChangeMother } from './change-mother.tsx'
import { LabResult } from './lab-result.tsx'
import { MotherDeed } from './mother-deed.tsx'
import { MotherHealth } from './mother-health.tsx'
import { MotherOrigin } from './mother-origin.tsx'
import { WoodCollected } from './wood-collected.tsx'
import { WoodInHand } from './wood-in-hand.tsx'

const DEEDS = ['observe', 'hold', 'retire'] as const
const DOINGS = [...DEEDS, 'lab', 'wood', 'change', 'gives'] as const

/** One mother tree: what it may give, its health, the wood in hand, where it is from, and all that was said of it. */
export function MotherDetail({ id }: { readonly id: string }) {
  const { t } = useTranslation()
  const view = useQuery(look.mother(id))
  return (
    <Asked query={view} what={t('mothers.title')}>
      {data => <Detail view={data} />}
    </Asked>
  )
}

function Detail({ view }: { readonly view: MotherView }) {
  const { t } = useTranslation()
  const names = useNames()
  const tell = useTell()
  const today = names.nursery?.today ?? deviceDay()
  const [opened, open] = useOpened()
  const doing = DOINGS.find(one => one === opened) ?? null
  const close = () => open(null)
  const { row } = view
  const { mother } = row
  const place = useInSight<HTMLDivElement>(mother.id)
  return (
    <div ref={place} className="sheet stack">
      <div>
        <h2 data-names-page>{mother.name}</h2>
        <p className="writing">{view.writing}</p>
        <p>
          {mother.block}
          {row.onHold && (
            <>
              {' '}
              <span className="tag warn">{t('common.onHold')}</span>
            </>
          )}
          {row.retired && (
            <>
              {' '}
              <span className="tag warn">{t('mothers.retired')}</span>
            </>
          )}
        </p>
        {view.holds.length > 0 && <HoldList holds={view.holds} />}
        {view.queries.length > 0 && (
          <div className="caution">
            {view.queries.map(({ id, says }) => (
              <p key={id}>{tell(says)}</p>
            ))}
          </div>
        )}
      </div>
      <div className="row">
        <Button className="deed" onPress={() => open('wood')}>
          {t('mothers.wood.do')}
        </Button>
        <Button className="plain" onPress={() => open('lab')}>
          {t('mothers.lab.do')}
        </Button>
        {DEEDS.filter(deed => deed === 'observe' || (deed === 'hold' ? !row.onHold : !row.retired)).map(
          deed => (
            <Button key={deed} className="plain" onPress={() => open(deed)}>
              {t(`mothers.${deed}`)}
            </Button>
          ),
        )}
        <Button className="plain" onPress={() => open('change')}>
          {t('mothers.change')}
        </Button>
      </div>
      <MotherGives view={view} onChange={() => open('gives')} />
      <WoodInHand lots={view.lots} today={today} />
      <MotherHealth view={view} />
      <MotherOrigin view={view} today={today} />
      {view.licence !== null && <LicenceTally row={view.licence} today={today} />}
      <p className="row">
        <Link to="/lineage/$what/$id" params={{ what: 'mother', id: mother.id }}>
          {t('mothers.family')}
        </Link>
        <Link to="/lineage/$what/$id/affected" params={{ what: 'mother', id: mother.id }}>
          {t('mothers.affected')}
        </Link>
      </p>
      <details>
        <summary className="strong">{t('mothers.entries')}</summary>
        <EntryList entries={view.entries} />
      </details>
      {doing === 'lab' && <LabResult view={view} today={today} onClose={close} />}
      {doing === 'wood' && <WoodCollected view={view} today={today} onClose={close} />}
      {doing === 'gives' && <ChangeGives view={view} onClose={close} />}
      {doing === 'change' && <ChangeMother view={view} onClose={close} />}
      {(doing === 'observe' || doing === 'hold' || doing === 'retire') && (
        <MotherDeed view={view} deed={doing} onClose={close} />
      )}
    </div>
  )
}

function MotherGives({ view, onChange }: { readonly view: MotherView; readonly onChange: () => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <div>
      <h3>{t('mothers.gives')}</h3>
      {view.season.length === 0 && <p className="soft">{t('mothers.givesNothing')}</p>}
      <ul className="gives">
        {view.season.map(({ material, season, months, perWeek, given, mayGive, givenBy }) => {
          const left = Math.max(0, mayGive - given)
          const when = [
            months.length % 12 === 0
              ? t('mothers.allYear')
              : t('mothers.months', { months: format.months(months) }),
            ...(perWeek === null ? [] : [t('mothers.perWeek', { most: format.amount(perWeek) })]),
          ]
          return (
            <li key={`${material} ${months.join()}`}>
              <p>
                {t('mothers.season', {
                  given: format.amount(given),
                  may: format.amount(mayGive),
                  material: t(`trade.material.${material}`),
                  season,
                  left: format.amount(left),
                })}{' '}
                <span className="soft small">{when.join(', ')}</span>{' '}
                {givenBy.length > 0 && (
                  <Behind
                    name={`given ${material} ${months.join()}`}
                    says={t('mothers.given', {
                      given: format.amount(given),
                      material: t(`trade.material.${material}`),
                    })}
                    entries={view.entries.filter(({ id }) => givenBy.includes(id))}
                  />
                )}
              </p>
              <span className="left-bar" aria-hidden="true">
                <span style={{ inlineSize: `${mayGive > 0 ? (100 * left) / mayGive : 0}%` }} />
              </span>
            </li>
          )
        })}
      </ul>
      <Button className="quiet" onPress={onChange}>
        {t('mothers.giving.change')}
      </Button>
    </div>
  )
}
