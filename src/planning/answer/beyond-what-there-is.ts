import type { Plan } from '../plan.ts'
import { type Planned, weekName } from './planned.ts'

const MINUTES = 60
/** Less than this, in hours or square metres, is a rounding of the solver. */
const LEAST = 0.05

/** Hours that people work over, and area that is lent, week by week. */
export function beyondWhatThereIs({
  season,
  model,
  solution,
}: Pick<Planned, 'season' | 'model' | 'solution'>): Pick<Plan, 'overtime' | 'extraArea'> {
  const amount = (column: number, per = 1) => Math.round((solution.columnValue[column]! / per) * 10) / 10
  return {
    overtime: model.overtime
      .map(({ people, week, column }) => ({
        people: people.map(person => season.people[person]!.id),
        week: weekName(season, week),
        hours: amount(column, MINUTES),
      }))
      .filter(({ hours }) => hours >= LEAST)
      .sort(byWeek),
    extraArea: model.extraArea
      .map(({ place, week, column }) => ({
        place: season.places[place]!.place,
        week: weekName(season, week),
        squareMetres: amount(column),
      }))
      .filter(({ squareMetres }) => squareMetres >= LEAST)
      .sort(byWeek),
  }
}

const byWeek = (a: { readonly week: string }, b: { readonly week: string }) =>
  a.week < b.week ? -1 : a.week > b.week ? 1 : 0
