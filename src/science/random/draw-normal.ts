import { quantile } from '../distributions/normal.ts'
import type { SeededRandom } from './seeded-random.ts'

/**
 * A draw from the standard normal distribution: the quantile of one uniform number, so that one draw uses one number
 * and rises with it.
 * @source Wichura 1988, Applied Statistics 37:477-484 (inverse normal)
 * @example drawNormal(seededRandom(1)) // -0.03065
 */
export const drawNormal = (random: SeededRandom): number => quantile(random.uniform())
