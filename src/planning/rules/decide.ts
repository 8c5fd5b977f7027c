import type { Drafting } from '../model/drafting.ts'
import type { DeliveryColumn, RootstockUseColumn, StartColumn } from '../model/season-model.ts'
import type { UsefulStarts } from '../model/useful-starts.ts'
import type { Season } from '../season.ts'
import { courseOf } from './season-draft.ts'

/** Columns: how many to begin by each way in each week that is open and of use, at what it costs each. */
export function decideStarts(
  season: Season,
  model: Drafting,
  { useful }: UsefulStarts,
): { starts: StartColumn[]; startColumn: Int32Array } {
  const starts: StartColumn[] = []
  const startColumn = new Int32Array(season.ways.length * season.weeks).fill(-1)
  season.ways.forEach((way, w) => {
    for (let week = 0; week < season.weeks; week++) {
      if (!useful[w * season.weeks + week]) continue
      const column = model.column({
        name: `start/${way.name}/${week}`,
        part: 'material',
        cost: way.costPerPlant,
      })
      startColumn[w * season.weeks + week] = column
      starts.push({ way: w, week, column })
    }
  })
  return { starts, startColumn }
}

/**
 * Columns: of those begun, how many on each rootstock kind. Where a way accepts one kind only, the start's own column
 * stands for it; where several, a row shares the start out among them.
 */
export function decideRootstocks(
  season: Season,
  model: Drafting,
  starts: readonly StartColumn[],
): RootstockUseColumn[] {
  const uses: RootstockUseColumn[] = []
  for (const { way, week, column } of starts) {
    const { rootstock } = courseOf(season, way, week)
    if (!rootstock) continue
    const useWeek = week + rootstock.offset
    const { perPlant } = rootstock
    if (rootstock.kinds.length === 1) {
      uses.push({ way, week, kind: rootstock.kinds[0]!, useWeek, column, perPlant })
      continue
    }
    const name = season.ways[way]!.name
    const row = model.row({ rule: 'oneRootstockEach', subject: way, about: name, week, lower: 0, upper: 0 })
    model.put(row, column, -1)
    for (const kind of rootstock.kinds) {
      const part = model.column({
        name: `workedOn/${name}/${season.kinds[kind]!.id}/${week}`,
        part: 'material',
        cost: 0,
      })
      model.put(row, part, 1)
      uses.push({ way, week, kind, useWeek, column: part, perPlant })
    }
  }
  return uses
}

/** Columns: trees of an accepted kind delivered to an order in a week; it costs what the buyer values it less. */
export function decideDeliveries(season: Season, model: Drafting): DeliveryColumn[] {
  const deliveries: DeliveryColumn[] = []
  season.orders.forEach((order, o) => {
    for (const { kind, lessWorth } of order.kinds)
      for (
        let week = Math.max(0, order.earliestWeek);
        week <= Math.min(season.weeks - 1, order.latestWeek);
        week++
      ) {
        const column = model.column({
          name: `deliver/${order.id}/${season.kinds[kind]!.id}/${week}`,
          part: 'substitution',
          cost: lessWorth,
        })
        deliveries.push({ order: o, kind, week, column })
      }
  })
  return deliveries
}
