import type { Nursery } from '../../record/index.ts'
import { keyOf } from '../simulate/key-of.ts'

/**
 * A number that stands for all that is registered and settled beforehand: prices, kinds, protocols, benches, people,
 * mother trees, starts fixed by hand. When any of it changes, a plan is made anew; what merely happens (counts, orders, absences, holds) leaves a
 * plan standing where it still serves.
 */
export const restsOn = ({
  site,
  settings,
  prices,
  kinds,
  protocols,
  cultivars,
  benches,
  people,
  mothers,
  startSets,
}: Nursery): number =>
  keyOf(
    JSON.stringify([
      site,
      settings,
      prices,
      startSets,
      ...[kinds, protocols, cultivars, benches, people].map(registered => [...registered.values()]),
      [...mothers.values()].map(({ mother }) => mother),
    ]),
  )
