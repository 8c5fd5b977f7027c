import { skillsOf } from '../reading/skills.ts'
import type { Season } from '../season.ts'
import { LOADS_EVERY, type SeasonLoads } from './loads.ts'

/** Room for the loads of all parts of a season. */
export function nothingLoaded(season: Season, seasons: number): SeasonLoads {
  const { weeks } = season
  const rows = Math.ceil(seasons / LOADS_EVERY)
  const places = season.places.map((_, place) => place)
  const skills = skillsOf(season)
  return {
    weeks,
    places,
    skills,
    squareMetres: new Float32Array(rows * places.length * weeks),
    minutes: new Float32Array(rows * skills.length * weeks),
  }
}

/** Adds the loads of a part of the season to those of all places and skills. */
export function addLoads({ weeks, places, squareMetres, minutes }: SeasonLoads, part: SeasonLoads): void {
  for (let i = 0; i < minutes.length; i++) minutes[i]! += part.minutes[i]!
  const rows = places.length === 0 ? 0 : squareMetres.length / (places.length * weeks)
  part.places.forEach((place, own) => {
    for (let row = 0; row < rows; row++) {
      const from = (row * part.places.length + own) * weeks
      const to = (row * places.length + place) * weeks
      for (let w = 0; w < weeks; w++) squareMetres[to + w]! += part.squareMetres[from + w]!
    }
  })
}
