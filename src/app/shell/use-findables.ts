import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { useRested } from '../parts/use-rested.ts'
import { useFormat } from '../text/use-format.tsx'
import { useTerm } from '../text/use-term.ts'
import { THEMES } from '../theme/theme.ts'
import type { Findable } from './find-anything.ts'
import { SCREENS } from './screens.ts'

const DEEDS = [
  'plan',
  'stop',
  'accept',
  'newOrder',
  'promise',
  'import',
  'backup',
  'people',
  'language',
] as const

/** Past batches are many: the server finds them, once so much is typed and the hands rest. */
const LEAST_LETTERS = 2

/** The facts are heavy: fetched when something is first looked for. */
const facts = {
  queryKey: ['facts'],
  queryFn: async () => {
    const { allMethods, fruitsWith } = await import('../../trade/facts/index.ts')
    return { allMethods, fruitsWith }
  },
  staleTime: Number.POSITIVE_INFINITY,
  meta: { kept: false },
}

/** Everything that can be gone to or done, fetched only while the finder is open. */
export const useFindables = (said: string): readonly Findable[] => {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const { data: nursery } = useQuery(look.nursery())
  const { data: batches } = useQuery(look.batchesAlive())
  const { data: orders } = useQuery(look.orders())
  const { data: mothers } = useQuery(look.mothers())
  const find = useRested(said.trim()) ?? ''
  const { data: past } = useQuery({
    ...look.pastBatches(find),
    enabled: find.length >= LEAST_LETTERS,
    placeholderData: keepPreviousData,
  })
  const { data: known } = useQuery(facts)
  const fruits = useMemo(
    () =>
      known?.fruitsWith({ fruits: (nursery?.speciesSets ?? []).map(({ species }) => species), sets: [] }).all,
    [known, nursery],
  )
  return useMemo(
    () => [
      ...SCREENS.map(
        ({ id }): Findable => ({ id, kind: 'screen', name: t(`shell.screens.${id}`), also: '' }),
      ),
      ...DEEDS.map((id): Findable => ({ id, kind: 'deed', name: t(`shell.deeds.${id}`), also: '' })),
      ...THEMES.map(
        (theme): Findable => ({
          id: `theme:${theme}`,
          kind: 'deed',
          name: t('shell.deeds.theme', { theme: t(`shell.themes.${theme}`) }),
          also: '',
        }),
      ),
      ...(batches ?? []).map(
        (row): Findable => ({
          id: row.id,
          kind: 'batch',
          name: row.name,
          also: `${row.kindName}, ${term(row.stage)}`,
        }),
      ),
      ...(orders ?? []).map(
        ({ order, kindName }): Findable => ({
          id: order.id,
          kind: 'order',
          name: order.id,
          also: `${format.number(order.number)} ${kindName}, ${order.buyer}`,
        }),
      ),
      ...(mothers ?? []).map(
        ({ mother, cultivarName }): Findable => ({
          id: mother.id,
          kind: 'mother',
          name: mother.name,
          also: `${cultivarName}, ${mother.block}`,
        }),
      ),
      ...(nursery?.benches ?? []).map(
        (bench): Findable => ({
          id: bench.id,
          kind: 'bench',
          name: bench.name,
          also: t(`trade.place.${bench.place}`),
        }),
      ),
      ...(fruits ?? []).map(
        ({ id, commonName, botanical }): Findable => ({
          id,
          kind: 'fruit',
          name: term(commonName),
          also: botanical,
        }),
      ),
      ...(known?.allMethods() ?? []).map(
        ({ method, label }): Findable => ({ id: method, kind: 'method', name: term(label), also: '' }),
      ),
      ...(past ?? []).map(
        (row): Findable => ({
          id: row.id,
          kind: 'batch',
          name: row.name,
          also: `${row.kindName}, ${t('shell.finderPast')}`,
        }),
      ),
      ...(nursery?.protocols ?? []).map(
        ({ id, name }): Findable => ({ id, kind: 'protocol', name: term(name), also: '' }),
      ),
    ],
    [t, term, format, nursery, batches, orders, mothers, fruits, known, past],
  )
}
