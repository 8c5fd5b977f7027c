import type { OrderId } from '../trade/index.ts'
import { withoutMargins } from './model/build-season-model.ts'
import type { Margins } from './model/season-model.ts'
import type { Season } from './season.ts'
import type { SimulationMemory } from './simulate/simulate-by-component.ts'
import { firstMargins } from './sureness/first-margins.ts'

/** What a plan leaves behind for the next in the same process: a changed count then asks for little new. */
export interface PlanMemory {
  readonly simulated: SimulationMemory
  readonly margins: Map<OrderId, OrderMargin>
}

interface OrderMargin {
  readonly number: number
  readonly sure: number
  /** Weeks counted from 1970. */
  readonly dueWeek: number
  readonly plannedNumber: number
  readonly plannedDueWeek: number
}

export const planMemory = (): PlanMemory => ({ simulated: new Map(), margins: new Map() })

/** Where to begin: orders that are as they were begin with the margin that they ended with. */
export function rememberedMargins(season: Season, { margins }: PlanMemory): Margins {
  const remembered = season.orders.map(({ id, number, sure, dueWeek }) => {
    const known = margins.get(id)
    const isSame =
      known?.number === number && known.sure === sure && known.dueWeek === dueWeek + season.firstWeek
    return isSame ? known : undefined
  })
  const first = remembered.every(known => known) ? withoutMargins(season) : firstMargins(season)
  remembered.forEach((known, o) => {
    if (!known) return
    first.plannedNumber[o] = known.plannedNumber
    first.plannedDueWeek[o] = Math.max(0, known.plannedDueWeek - season.firstWeek)
  })
  return first
}

export function rememberMargins(season: Season, margins: Margins, memory: PlanMemory): void {
  memory.margins.clear()
  season.orders.forEach(({ id, number, sure, dueWeek }, o) => {
    memory.margins.set(id, {
      number,
      sure,
      dueWeek: dueWeek + season.firstWeek,
      plannedNumber: margins.plannedNumber[o]!,
      plannedDueWeek: margins.plannedDueWeek[o]! + season.firstWeek,
    })
  })
}
