import { useQueryClient } from '@tanstack/react-query'
import { rowsOf } from '../../api/index.ts'
import { type Body, type EntryNames, entryPhrase } from '../../record/index.ts'
import { look } from '../data/queries.ts'
import { useNames } from '../data/use-names.tsx'
import { useTell } from '../text/use-tell.ts'

const byId = <T extends { readonly id: string }>(things: readonly T[] | undefined) =>
  new Map((things ?? []).map(thing => [thing.id, thing] as const))

/** What waits on this device, in the words that the office will have for it; things by the names that were seen here. */
export function useSayBody(): (body: Body) => string {
  const seen = useQueryClient()
  const tell = useTell()
  const { nursery, kinds, benches, people, protocols } = useNames()
  return body => {
    const alive = seen.getQueryData(look.batchesAlive().queryKey)
    const rows = alive === undefined ? [] : rowsOf(alive)
    const own =
      'batch' in body && typeof body.batch === 'string' && seen.getQueryData(look.batch(body.batch).queryKey)
    const names: EntryNames = {
      batches: byId(own ? [...rows, own.row] : rows),
      mothers: new Map(
        (seen.getQueryData(look.mothers().queryKey) ?? []).map(row => [row.mother.id as string, row]),
      ),
      cultivars: byId(nursery?.cultivars),
      kinds,
      benches,
      people,
      protocols,
      former: { kinds: new Map(), benches: new Map(), people: new Map() },
    }
    return tell(entryPhrase(body, names))
  }
}
