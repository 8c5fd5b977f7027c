import { useQuery } from '@tanstack/react-query'
import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { useFormat } from '../text/use-format.ts'
import { THEMES } from '../theme/theme.ts'
import type { Findable } from './find-anything.ts'
import { SCREENS } from './screens.ts'

/** Everything that can be gone to or done, fetched only while the finder is open. */
export const useFindables = (isOpen: boolean): readonly Findable[] => {
  const { t } = useTranslation()
  const format = useFormat()
  const { data: nursery } = useQuery({ ...look.nursery(), enabled: isOpen })
  const { data: batches } = useQuery({ ...look.batchesAlive(), enabled: isOpen })
  const { data: orders } = useQuery({ ...look.orders(), enabled: isOpen })
  const { data: mothers } = useQuery({ ...look.mothers(), enabled: isOpen })
  return useMemo(
    () => [
      ...SCREENS.map(
        ({ id }): Findable => ({ id, kind: 'screen', name: t(`shell.screens.${id}`), also: '' }),
      ),
      ...(['plan', 'stop', 'newOrder'] as const).map(
        (id): Findable => ({ id, kind: 'deed', name: t(`shell.deeds.${id}`), also: '' }),
      ),
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
          also: `${row.kindName}, ${row.stage}`,
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
    ],
    [t, format, nursery, batches, orders, mothers],
  )
}
