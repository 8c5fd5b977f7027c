import { skillsOf } from '../reading/skills.ts'
import type { Season } from '../season.ts'
import { LOADS_EVERY, type SeasonLoads } from './loads.ts'

/** Loads of the parts of a season, added up in their order. */
export function loadsSummed(season: Season, seasons: number) {
  const { weeks } = season
  const rows = Math.ceil(seasons / LOADS_EVERY)
  const places = season.places.map((_, place) => place)
  const skills = skillsOf(season)
  const squareMetres = new Float32Array(rows * places.length * weeks)
  const minutes = new Float32Array(rows * skills.length * weeks)
  const sum: SeasonLoads = { weeks, places, skills, squareMetres, minutes }
  return {
    sum,
    add(part: SeasonLoads): void {
      for (let i = 0; i < minutes.length; i++) minutes[i]! += part.minutes[i]!
      part.places.forEach((place, own) => {
        for (let row = 0; row < rows; row++) {
          const from = (row * part.places.length + own) * weeks
          const to = (row * places.length + place) * weeks
          for (let w = 0; w < weeks; w++) squareMetres[to + w]! += part.squareMetres[from + w]!
        }
      })
    },
  }
}
