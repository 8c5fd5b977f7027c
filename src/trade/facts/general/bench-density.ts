import { commonPractice } from '../../figure.ts'
import { fromMemory, published } from './published.ts'

/** Plants to a square metre of bench. */
export const plantsPerSquareMetre = {
  cuttings: commonPractice(200, 450, 900, 'beds or trays of 40 to 100 cells'),
  tubes: commonPractice(300, 400, 450, '50 mm tubes'),
  /** The square of a 10 cm spacing: computed. */
  smallPots: commonPractice(80, 100, 115, '10 cm from centre to centre'),
  potToPot: commonPractice(28, 36, 45, 'grafted plants in 2 to 3 l pots'),
  spaced: commonPractice(12, 18, 25, 'the same, spaced once leafy'),
  finishingPots: commonPractice(4, 6, 9, '10 to 15 l pots'),
  boxed: fromMemory(600, 1000, 1500, 'bundles of bench grafts upright in boxes'),
  nurseryRow: fromMemory(3, 4.5, 7, 'lined out, 15 to 30 cm in the row'),
} as const

/** Usable share of a house floor. */
export const benchShareOfFloor = commonPractice(0.55, 0.67, 0.8)

/** How long plants may stand crowded before their form and health suffer. */
export const crowdedDays = published(0, 21, 21, ['UT_PB1458'], { note: 'read at second hand' })

/**
 * Plants to a square metre at a spacing from centre to centre.
 * Square: 10,000 / s². Diagonal: 2 / √3 (15.5 %) more.
 * @source arithmetic; GPN_SPACING prints 400 and 462 plants to 100 square feet at 6 inches
 * @example plantsPerSquareMetreAt(25.4, 'square') // 15.5
 */
export const plantsPerSquareMetreAt = (spacingCm: number, pattern: 'square' | 'diagonal'): number =>
  (10_000 / spacingCm ** 2) * (pattern === 'diagonal' ? 2 / Math.sqrt(3) : 1)
