import { useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { startTransition, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { RateRow } from '../../../api/index.ts'
import { answering } from '../../data/folded.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { Choices } from '../../parts/choices.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { RatePicture } from '../../pictures/rate-points/rate-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { SetRate } from './set-rate.tsx'

const route = getRouteApi('/rates')
const SHOW = ['own', 'set', 'all'] as const
const GROUPS_AT_ONCE = 6
const nameOf = ({ kind, protocol, step }: RateRow): string => JSON.stringify([kind, protocol, step])

/** What takes, step by step: one picture for each kind, a lane for each step. */
export function StepRates() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const { find: inAddress, show = 'own' } = route.useSearch()
  const [find, setFind] = useState(inAddress ?? '')
  const navigate = route.useNavigate()
  const rates = useQuery(look.rates())
  const [groupsShown, setGroupsShown] = useState(GROUPS_AT_ONCE)
  const [opened, open] = useOpened()
  const chosen = rates.data?.find(row => nameOf(row) === openedOf(opened, 'rate'))
  const groups = useMemo(() => {
    const answers = answering(find)
    const rows = (rates.data ?? []).filter(row => {
      if (show === 'own' && row.from === 'facts') return false
      if (show === 'set' && row.from !== 'set by the nursery') return false
      return answers(`${row.kindName ?? ''} ${term(row.protocolName)} ${term(row.stepName)}`)
    })
    const byKind = new Map<string, RateRow[]>()
    for (const row of rows) {
      const key = row.kindName ?? t('rates.anyKind')
      byKind.set(key, [...(byKind.get(key) ?? []), row])
    }
    return [...byKind].sort(([a], [b]) => a.localeCompare(b, format.locale))
  }, [rates.data, find, show, t, term, format])

  return (
    <Asked query={rates} what={t('rates.title')}>
      {() => (
        <div className="stack">
          <div className="row">
            <FindField
              inAddress={inAddress}
              hint={t('rates.findHint')}
              onFind={find => startTransition(() => setFind(find))}
              onRest={find => void navigate({ search: was => ({ ...was, find }), replace: true })}
            />
            <Choices
              label={t('rates.show.label')}
              value={show}
              options={SHOW.map(id => ({ id, name: t(`rates.show.${id}`) }))}
              onPick={id => void navigate({ search: was => ({ ...was, show: id }), replace: true })}
            />
          </div>
          {groups.length === 0 && <p className="soft">{t('rates.empty')}</p>}
          {groups.slice(0, groupsShown).map(([kind, rows]) => {
            const ways = [...new Set(rows.map(({ protocolName }) => term(protocolName)))]
            return (
              <RatePicture
                key={kind}
                title={kind}
                says={ways.length === 1 ? ways[0] : undefined}
                rows={rows}
                nameOf={row => term(row.stepName)}
                underOf={row => (ways.length === 1 ? undefined : term(row.protocolName))}
                onChoose={row => open(`rate ${nameOf(row)}`)}
              />
            )
          })}
          {groups.length > groupsShown && (
            <p>
              <Button className="plain" onPress={() => setGroupsShown(groupsShown + 4 * GROUPS_AT_ONCE)}>
                {t('rates.more', { shown: format.number(groups.length - groupsShown) })}
              </Button>
            </p>
          )}
          {chosen !== undefined && <SetRate rate={chosen} onClose={() => open(null)} />}
        </div>
      )}
    </Asked>
  )
}
