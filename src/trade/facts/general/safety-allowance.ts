import { commonPractice } from '../../figure.ts'

/** Share started on top of the computed need, by how well the making is in hand. */
export const safetyAllowance = {
  easy: commonPractice(0.05, 0.1, 0.15, 'fig, grape, mulberry, dragon fruit, lime layers'),
  medium: commonPractice(0.15, 0.25, 0.35, 'mango, citrus, apple, guava, persimmon'),
  hard: commonPractice(0.4, 0.7, 1.2, 'clonal avocado, sapodilla, feijoa cuttings, lychee grafts'),
} as const
