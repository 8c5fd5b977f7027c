import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { RatesCompared } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { PointsPicture } from '../../pictures/rate-points/points-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'

type Finding = RatesCompared['people'][number]['finding']
type Member = Pick<
  RatesCompared['people'][number]['members'][number],
  'share' | 'low' | 'high' | 'batches'
> & {
  readonly name: string
  readonly entered: number
  readonly survived: number
}

const AT_FIRST = 12

/** People, or months of the start, beside each other: as if all had had the same plants, with what may be said of it. */
export function Compared({ by }: { readonly by: 'people' | 'months' }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const query = useQuery(look.ratesCompared())
  const [isAll, setAll] = useState(false)
  return (
    <Asked query={query} what={t('rates.title')}>
      {compared => {
        const groups =
          by === 'people'
            ? compared.people.map(({ method, methodName, members, finding }) => ({
                key: method,
                title: term(methodName),
                members: members as readonly Member[],
                finding,
              }))
            : compared.months.map(({ protocol, protocolName, step, stepName, members, finding }) => ({
                key: `${protocol} ${step}`,
                title: `${term(protocolName)}: ${term(stepName)}`,
                members: members.map(one => ({
                  ...one,
                  name: format.month(one.member - 1),
                })) as readonly Member[],
                finding,
              }))
        return (
          <div className="stack">
            <p className="soft">{t(`rates.compared.${by}`)}</p>
            {groups.length === 0 && <p className="soft">{t('rates.compared.none')}</p>}
            {groups.slice(0, isAll ? groups.length : AT_FIRST).map(({ key, title, members, finding }) => (
              <ComparedGroup key={key} title={title} members={members} finding={finding} />
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

function ComparedGroup({
  title,
  members,
  finding,
}: {
  readonly title: string
  readonly members: readonly Member[]
  readonly finding: Finding
}) {
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
        key: one.name,
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
