import type { Nursery } from '../../record/index.ts'
import type { Season } from '../season.ts'
import { readSeason } from './read-season.ts'

const seasons = new WeakMap<Nursery, { readonly today: string; readonly season: Season }>()

/** The season of a nursery on a day, read once: a nursery is never changed once folded. */
export function seasonOf(nursery: Nursery, today: string): Season {
  const known = seasons.get(nursery)
  if (known?.today === today) return known.season
  const season = readSeason(nursery, today)
  seasons.set(nursery, { today, season })
  return season
}
