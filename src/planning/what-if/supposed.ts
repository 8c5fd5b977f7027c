import * as z from 'zod'
import { bodies, type Nursery } from '../../record/index.ts'

/** What may be supposed: one thing, said as the entry that would make it so. */
export const Supposed = z.discriminatedUnion('kind', [
  bodies.benchSet,
  bodies.personSet,
  bodies.orderChanged,
  bodies.rateSet,
])
export type Supposed = z.infer<typeof Supposed>

/** The nursery as it would be, and nothing is entered; null where the order is not known. */
export function nurseryWith(nursery: Nursery, supposed: Supposed, today: string): Nursery | null {
  switch (supposed.kind) {
    case 'bench-set/1':
      return { ...nursery, benches: new Map(nursery.benches).set(supposed.bench.id, supposed.bench) }
    case 'person-set/1':
      return { ...nursery, people: new Map(nursery.people).set(supposed.person.id, supposed.person) }
    case 'order-changed/1': {
      const { order } = supposed
      const state = nursery.orders.get(order.id)
      return state ? { ...nursery, orders: new Map(nursery.orders).set(order.id, { ...state, order }) } : null
    }
    case 'rate-set/1': {
      const { protocol, step, kindOfTree: kind, survival, why } = supposed
      return {
        ...nursery,
        rateSets: [...nursery.rateSets, { entry: null, protocol, step, kind, survival, on: today, why }],
      }
    }
  }
}
