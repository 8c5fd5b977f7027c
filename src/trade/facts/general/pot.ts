import type { Figure } from '../../figure.ts'
import { fromMemory, published } from './published.ts'

/** What pots of a trade name really hold. A "gallon" pot holds 0.7 to 0.75 of a gallon: never reckon by the name. */
export interface Pot {
  readonly name: string
  readonly litres: Figure
}

const remembered = (name: string, low: number, high: number): Pot => ({
  name,
  litres: fromMemory(low, (low + high) / 2, high),
})
const classPot = (name: string, low: number, high: number, cubicInches: string): Pot => ({
  name,
  litres: published(low, (low + high) / 2, high, ['ANSI_Z60'], {
    typicalBasis: 'interpolated',
    note: `${cubicInches} cubic inches; read at second hand`,
  }),
})

export const pots: readonly Pot[] = [
  remembered('50 mm tube', 0.1, 0.15),
  remembered('70 mm', 0.2, 0.25),
  remembered('100 mm', 0.45, 0.55),
  remembered('125 mm', 0.9, 1.1),
  remembered('140 mm', 1.3, 1.6),
  remembered('175 mm', 2.3, 2.8),
  remembered('200 mm', 3.7, 4.5),
  remembered('250 mm', 7, 9),
  remembered('300 mm', 13, 16),
  classPot('Class #1', 2.5, 4.1, '152 to 251'),
  classPot('Class #2', 5.2, 7.8, '320 to 474'),
  classPot('Class #3', 10.3, 12.2, '628 to 742'),
  classPot('Class #5', 12.9, 20.4, '785 to 1242'),
  remembered('poly bag 15 × 25 cm', 1.5, 2.5),
  remembered('poly bag 18 × 13 × 30 cm', 5, 7),
]
