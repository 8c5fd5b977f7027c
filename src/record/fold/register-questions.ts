import type { BenchId, KindId, Material, MotherId, StepId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'
import type { Mother, Order } from '../register.ts'

/** What a family asks of the registers; the fold notes each question, and asks again when an answer changes. */
export interface Registers {
  /** The steps of a protocol in any of its versions, in order; none if it is not written down. */
  steps(protocol: string): readonly StepId[]
  kind(
    id: KindId,
  ):
    | { readonly name: string; readonly cultivars: readonly string[]; readonly interstem: string | null }
    | undefined
  cultivarName(id: string): string
  bench(id: BenchId): { readonly name: string; readonly removedBy: Entry['id'] | null } | undefined
  mother(id: MotherId): Mother | undefined
  lot(id: string): { readonly mother: MotherId; readonly material: Material } | undefined
  order(id: string): Order | undefined
}
