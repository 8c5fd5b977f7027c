import { grouped } from '../grouped.ts'
import type { MotherPool, SeasonKind, SeasonOrder, SeasonWay, YoungMothers } from '../season.ts'

/** Of what a grown mother gives, in the first, second … year after planting. Common practice, no source. */
const SHARE_BY_AGE = [0, 0.25, 0.6, 1]
/** A young mother costs so many times the price of a tree: itself, planting and care. Our choice, no source. */
const TIMES_PRICE = 2
/** Where the orders need more than this part of what the mothers give, planting more is thought of. */
const SCARCE_SHARE = 0.6

/**
 * Pools in which young mothers may be planted: those of which the open orders together would need most of what can be
 * cut in a season. They are planted from finished trees, at the price of these.
 */
export function withYoungMothers(
  pools: readonly MotherPool[],
  ways: readonly SeasonWay[],
  kinds: readonly SeasonKind[],
  orders: readonly SeasonOrder[],
): MotherPool[] {
  const wanted = new Float64Array(kinds.length)
  for (const { kinds: accepted, number } of orders) wanted[accepted[0]!.kind]! += number
  const need = new Float64Array(pools.length)
  const price = new Float64Array(pools.length)
  for (const { kind, courses } of ways) {
    const course = courses[0]
    if (!course || wanted[kind] === 0) continue
    const survival = course.ready.reduce((sum, share) => sum + share, 0)
    for (const { pool, perPlant } of course.material) {
      need[pool] = Math.max(need[pool]!, (wanted[kind]! / Math.max(survival, 0.05)) * perPlant)
      price[pool] = Math.max(price[pool]!, kinds[kind]!.price)
    }
  }
  return pools.map((pool, p) => ({ ...pool, young: youngOf(pool, need[p]!, price[p]!) }))
}

const bestSeason = (own: MotherPool['mothers']): number =>
  Math.max(0, ...own[0]!.perYear.map((_, s) => own.reduce((sum, { perYear }) => sum + perYear[s]!, 0)))

function youngOf(pool: MotherPool, need: number, price: number): YoungMothers | null {
  const { mothers, perYear, cultivar } = pool
  if (cultivar === null || mothers.length === 0) return null
  const inSeason = Math.max(...perYear.map(({ most }) => most))
  if (need <= SCARCE_SHARE * inSeason) return null
  const grown =
    [...grouped(mothers, ({ id }) => id).values()].reduce((sum, own) => sum + bestSeason(own), 0) /
    new Set(mothers.map(({ id }) => id)).size
  return { costEach: price * TIMES_PRICE, perSeasonByAge: SHARE_BY_AGE.map(share => share * grown) }
}
