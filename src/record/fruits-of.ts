import { type Fruits, fruitsWith } from '../trade/facts/index.ts'
import type { Nursery } from './state.ts'

type Said = Pick<Nursery, 'speciesSets' | 'factSets'>

let kept: { readonly of: Said; readonly fruits: Fruits } | undefined

/** The fruits as the nursery has them: the facts, its own fruits, and its own figures in the place of those given. */
export function fruitsOf({ speciesSets, factSets }: Said): Fruits {
  if (kept?.of.speciesSets === speciesSets && kept.of.factSets === factSets) return kept.fruits
  const fruits = fruitsWith({
    fruits: speciesSets.map(({ species }) => species),
    sets: factSets.map(({ species, set }) => ({ species, ...set })),
  })
  kept = { of: { speciesSets, factSets }, fruits }
  return fruits
}
