import { useQueries, useQuery } from '@tanstack/react-query'
import type { RateRow } from '../../../api/index.ts'
import type { MethodId, Protocol } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'

/** What this nursery has of a method: its protocols, and the rates that its own batches taught. */
export function useMethod(method: MethodId): {
  readonly protocols: readonly Protocol[]
  readonly isUsed: boolean
  readonly learnt: readonly RateRow[]
} {
  const { nursery } = useNames()
  const { data: rates } = useQuery(look.rates())
  const used = (nursery?.protocols ?? []).filter(protocol => protocol.method === method)
  const asked = useQueries({ queries: used.map(({ id }) => look.protocol(id)) })
  return {
    protocols: asked.flatMap(({ data }) => (data === undefined ? [] : [data])),
    isUsed: used.length > 0,
    learnt: (rates ?? []).filter(row => row.method === method && row.from === 'records' && row.batches > 0),
  }
}
