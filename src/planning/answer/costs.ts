import { costOfLate } from '../rules/orders-by-their-date.ts'
import type { ChosenStart, Planned } from './planned.ts'

/**
 * What the plan costs, by what it is spent on: parts that add up to its cost. Overtime counts beyond the pay of the hour.
 */
export function costParts(
  planned: Pick<Planned, 'season' | 'model' | 'solution' | 'starts'>,
): Record<string, number> {
  const { season, model, solution, starts } = planned
  const parts: Record<string, number> = {}
  const add = (part: string, cost: number) => {
    parts[part] = (parts[part] ?? 0) + cost
  }
  for (const start of starts) {
    add('material', start.number * season.ways[start.way]!.costPerPlant)
    add('labour', minutesOf(start) * season.prices.minute)
    for (const { place, squareMetres } of start.course.area) {
      const price = season.places[place]!.pricePerSquareMetreWeek
      for (const area of squareMetres) add('area', start.number * area * price)
    }
  }
  const { columnValue } = solution
  /** Plants kept for some weeks cost their care and the area on which they stand. */
  const addKept = (kind: number, plantWeeks: number) => {
    const { holdingCostPerWeek, standsAt } = season.kinds[kind]!
    add('holding', plantWeeks * holdingCostPerWeek)
    if (standsAt)
      add('area', plantWeeks * standsAt.squareMetres * season.places[standsAt.place]!.pricePerSquareMetreWeek)
  }
  for (const { kind, week, until, column } of model.holds)
    addKept(kind, columnValue[column]! * (until - week))
  for (const { kind, column, plantWeeks } of model.waits) addKept(kind, columnValue[column]! * plantWeeks)
  for (const { kind, column } of model.bought)
    add('buying in', columnValue[column]! * season.kinds[kind]!.buyIn!.price)
  for (let column = 0; column < model.columns.count; column++) {
    const part = model.columns.part[column]!
    if (part === 'overtime' || part === 'extra area' || part === 'mother trees')
      add(part, columnValue[column]! * model.columns.cost[column]!)
  }
  for (const [part, cost] of Object.entries(weighedParts(planned))) add(part, cost)
  return Object.fromEntries(
    Object.entries(parts)
      .map(([part, cost]) => [part, Math.round(cost * 100) / 100] as const)
      .filter(([, cost]) => cost !== 0),
  )
}

/** What is weighed and paid by nobody: trees short, late or of another kind, and starts moved that people have seen. */
export function weighedParts({
  season,
  model,
  solution,
}: Pick<Planned, 'season' | 'model' | 'solution'>): Record<
  'shortage' | 'moving' | 'lateness' | 'substitution',
  number
> {
  const parts = { shortage: 0, moving: 0, lateness: 0, substitution: 0 }
  for (let column = 0; column < model.columns.count; column++) {
    const part = model.columns.part[column]!
    if (part === 'shortage' || part === 'moving')
      parts[part] += solution.columnValue[column]! * model.columns.cost[column]!
  }
  for (const { order, kind, week, number } of solution.deliveries) {
    const wanted = season.orders[order]!
    parts.lateness += number * costOfLate(wanted, season.prices, wanted.dueWeek, week)
    parts.substitution += number * wanted.kinds.find(accepted => accepted.kind === kind)!.lessWorth
  }
  return parts
}

function minutesOf({ number, course }: ChosenStart): number {
  let minutes = 0
  for (const { perPlant, perBatch } of course.labour)
    for (let k = 0; k < perPlant.length; k++) minutes += number * perPlant[k]! + perBatch[k]!
  return minutes
}
