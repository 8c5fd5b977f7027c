import { requireAbove, requireWithin } from '../bounds.ts'

/** The share of plants that come through a step: known, or known only by its distribution from batch to batch. */
export type Rate =
  | { readonly kind: 'known'; readonly share: number }
  | { readonly kind: 'uncertain'; readonly alpha: number; readonly beta: number }

/** The steps of a batch with the known shares gathered into one. */
export interface Course {
  /** Product of the known shares. */
  readonly known: number
  readonly uncertain: readonly { readonly alpha: number; readonly beta: number }[]
}

export function courseOf(place: string, steps: readonly Rate[]): Course {
  let known = 1
  const uncertain: { alpha: number; beta: number }[] = []
  for (const step of steps) {
    if (step.kind === 'known') {
      requireWithin(place, 'share', step.share, 0, 1)
      known *= step.share
    } else {
      requireAbove(place, 'alpha', step.alpha, 0)
      requireAbove(place, 'beta', step.beta, 0)
      uncertain.push({ alpha: step.alpha, beta: step.beta })
    }
  }
  return { known, uncertain }
}

/** E[P^power] of the share P that comes through the whole course, for a power of 1 or 2. */
export function moment(course: Course, power: 1 | 2): number {
  let product = course.known ** power
  for (const { alpha, beta } of course.uncertain) {
    product *= alpha / (alpha + beta)
    if (power === 2) product *= (alpha + 1) / (alpha + beta + 1)
  }
  return product
}

/**
 * The course weighed by the share itself: the density of P times P / E[P]. A Beta stays a Beta, with alpha one more.
 * E[P · g(P)] = E[P] · E*[g(P)].
 */
export const weighedByShare = ({ known, uncertain }: Course): Course => ({
  known,
  uncertain: uncertain.map(({ alpha, beta }) => ({ alpha: alpha + 1, beta })),
})
