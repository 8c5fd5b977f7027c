import { useQuery } from '@tanstack/react-query'
import { Fragment, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { RatesCompared } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { FunnelPicture } from '../../pictures/funnel/funnel-picture.tsx'
import { PointsPicture } from '../../pictures/rate-points/points-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'

type Finding = RatesCompared['people'][number]['finding']
type Member = Pick<
  RatesCompared['people'][number]['members'][number],
  'name' | 'share' | 'low' | 'high' | 'batches' | 'entered' | 'survived' | 'seen'
> & { readonly member: string | number }
interface Group {
  readonly key: string
  readonly title: string
  readonly share: number
  readonly members: readonly Member[]
  readonly finding: Finding
}
export type ComparedBy = keyof RatesCompared

const AT_FIRST = 6
/** More than so many lanes are no picture: of these the funnel and its table tell. */
const MOST_LANES = 40
/** Limits of two would say what their points say. */
const FEWEST_IN_FUNNEL = 3

/** Kinds, rootstocks, methods, cultivars, months of the start or people beside each other: as if all had had the same plants. */
export function Compared({ by }: { readonly by: ComparedBy }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const query = useQuery(look.ratesCompared())
  const [isAll, setAll] = useState(false)
  return (
    <Asked query={query} what={t('rates.title')}>
      {compared => {
        const inMethod = (groups: RatesCompared['people'] | RatesCompared['rootstocks']): Group[] =>
          groups.map(one => ({ ...one, key: one.method, title: term(one.methodName) }))
        const inStep = (groups: RatesCompared['kinds'] | RatesCompared['months']): Group[] =>
          groups.map(one => ({
            ...one,
            key: `${one.protocol} ${one.step}`,
            title: `${term(one.protocolName)}: ${term(one.stepName)}`,
            members: one.members.map(member => ({
              ...member,
              name: typeof member.member === 'number' ? format.month(member.member - 1) : member.name,
            })),
          }))
        const groupsBy: { readonly [By in ComparedBy]: () => Group[] } = {
          people: () => inMethod(compared.people),
          rootstocks: () => inMethod(compared.rootstocks),
          kinds: () => inStep(compared.kinds),
          months: () => inStep(compared.months),
          methods: () =>
            compared.methods.map(one => ({
              ...one,
              key: one.species,
              title: term(one.fruitName),
              members: one.members.map(member => ({ ...member, name: term(member.name) })),
            })),
          cultivars: () =>
            compared.cultivars.map(one => ({
              ...one,
              key: `${one.species} ${one.method}`,
              title: `${term(one.fruitName)}: ${term(one.methodName)}`,
            })),
        }
        const groups = groupsBy[by]()
        return (
          <div className="stack">
            {groups.length === 0 && <p className="soft">{t('rates.compared.none')}</p>}
            {groups.slice(0, isAll ? groups.length : AT_FIRST).map(group => (
              <Fragment key={group.key}>
                {group.members.length <= MOST_LANES && <ComparedGroup {...group} />}
                {group.members.length >= FEWEST_IN_FUNNEL && (
                  <FunnelPicture
                    title={t(by === 'people' ? 'rates.compared.funnel' : 'rates.compared.funnelOf', {
                      of: group.title,
                    })}
                    of={t('rates.compared.who')}
                    share={group.share}
                    points={group.members.map(one => ({ ...one, key: String(one.member), ...one.seen }))}
                  />
                )}
              </Fragment>
            ))}
            {groups.length > AT_FIRST && !isAll && (
              <p>
                <Button className="plain" onPress={() => setAll(true)}>
                  {t('common.more', {
                    count: groups.length - AT_FIRST,
                    shown: format.number(groups.length - AT_FIRST),
                  })}
                </Button>
              </p>
            )}
          </div>
        )
      }}
    </Asked>
  )
}

function ComparedGroup({ title, members, finding }: Omit<Group, 'key' | 'share'>) {
  const { t } = useTranslation()
  const format = useFormat()
  const first = members[0]?.name ?? ''
  const last = members.at(-1)?.name ?? ''
  return (
    <PointsPicture
      title={title}
      says={t(`rates.compared.finding.${finding.kind}`, {
        first,
        last,
        chance: format.share(Math.min(finding.chanceFirstBetter, 0.99)),
        more: format.number(finding.plantsMore),
      })}
      isClose
      lanes={members.map(one => ({
        key: String(one.member),
        name: one.name,
        share: one.share,
        low: one.low,
        high: one.high,
        sign: 'own',
        says: t('rates.compared.batches', {
          count: one.batches,
          shown: format.number(one.batches),
          survived: format.number(one.survived),
          entered: format.number(one.entered),
        }),
      }))}
      numbers={() => ({
        columns: [
          t('rates.compared.who'),
          `${t('rates.column.rate')} %`,
          `${t('rates.column.low')} %`,
          `${t('rates.column.high')} %`,
          t('rates.column.entered'),
          t('rates.column.survived'),
        ],
        rows: members.map(one => [
          one.name,
          Math.round(1000 * one.share) / 10,
          Math.round(1000 * one.low) / 10,
          Math.round(1000 * one.high) / 10,
          one.entered,
          one.survived,
        ]),
      })}
    />
  )
}
