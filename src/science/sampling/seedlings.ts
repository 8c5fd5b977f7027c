import { requireBetween, requireWhole } from '../bounds.ts'
import { needed } from '../number-to-start/needed.ts'
import type { Rate } from '../number-to-start/rate.ts'

/**
 * How many seedlings to plant for a chance of at least `good` worth keeping.
 * @param good whole, 0 or more
 * @param share of seedlings worth keeping, known or as a Beta
 * @param sure between 0 and 1
 * @source beta-binomial as `needed`
 * @example seedlingsFor(1, { kind: 'known', share: 0.05 }, 0.9) // 45
 */
export const seedlingsFor = (good: number, share: Rate, sure: number): number =>
  needed({ wanted: good, sure, steps: [share] }).start

/**
 * How many plants to sample so that a gene variant of a given frequency is caught at least once.
 * @param frequency of the variant among gametes, between 0 and 1
 * @param setsPerPlant chromosome sets that a plant carries from independent gametes: 1, 2 …
 * @throws RangeError for an argument out of range
 * @source Marshall & Brown 1975, in Frankel & Hawkes (eds), Crop Genetic Resources for Today and Tomorrow, 53-80 (about
 *   59 gametes for 5 % and 95 %)
 * @example plantsToCatchVariant(0.05, 0.95, 2) // 30
 */
export function plantsToCatchVariant(frequency: number, sure: number, setsPerPlant: number): number {
  requireBetween('plantsToCatchVariant', 'frequency', frequency, 0, 1)
  requireBetween('plantsToCatchVariant', 'sure', sure, 0, 1)
  requireWhole('plantsToCatchVariant', 'setsPerPlant', setsPerPlant, 1)
  return Math.ceil(Math.log1p(-sure) / (setsPerPlant * Math.log1p(-frequency)) - 1e-9)
}

/**
 * Seed to weigh out for a number of seedlings.
 * @param seedlings wanted, above 0
 * @param shares germination, purity by weight, survival after germination; above 0, up to 1
 * @param seedsPerKg pure seeds to the kilogram
 * @throws RangeError for an argument out of range
 * @source common practice, no source
 * @example seedToSow(5000, { germination: 0.72, purity: 0.95, survival: 0.8 }, 22000) // { seeds: 8680.6, kg: 0.4153 }
 */
export function seedToSow(
  seedlings: number,
  shares: { readonly germination: number; readonly purity: number; readonly survival: number },
  seedsPerKg: number,
): { seeds: number; kg: number } {
  for (const [name, share] of Object.entries(shares))
    if (!(share > 0 && share <= 1))
      throw new RangeError(`seedToSow: ${name} must be above 0 and up to 1, got ${share}`)
  if (!(seedlings >= 0)) throw new RangeError(`seedToSow: seedlings must be 0 or more, got ${seedlings}`)
  if (!(seedsPerKg > 0)) throw new RangeError(`seedToSow: seedsPerKg must be above 0, got ${seedsPerKg}`)
  const seeds = seedlings / (shares.germination * shares.survival)
  return { seeds, kg: seeds / (seedsPerKg * shares.purity) }
}
