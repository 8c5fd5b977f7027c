import type { Solution } from '../model/season-model.ts'

/** So little above a whole number is what a solver leaves. */
const HAIR = 1e-6

/**
 * What is bought in, in whole plants: of each kind never fewer by any week than was wanted by then, and less than one more
 * in all.
 */
export function boughtWhole(bought: Solution['bought']): Solution['bought'] {
  const wanted = new Map<number, number>()
  return [...bought]
    .sort((a, b) => a.week - b.week)
    .map(({ kind, week, number }) => {
      const before = wanted.get(kind) ?? 0
      wanted.set(kind, before + number)
      return { kind, week, number: whole(before + number) - whole(before) }
    })
    .filter(({ number }) => number > 0)
}

const whole = (number: number) => Math.ceil(number - HAIR)
