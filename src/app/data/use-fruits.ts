import { useMemo } from 'react'
import { fruitsOf } from '../../record/index.ts'
import type { Fruits } from '../../trade/facts/index.ts'
import { useNames } from './use-names.tsx'

const nothing = { speciesSets: [], factSets: [] }

/** The fruits as the nursery has them. For screens that carry the facts, which are heavy. */
export const useFruits = (): Fruits => {
  const { nursery } = useNames()
  return useMemo(() => fruitsOf(nursery ?? nothing), [nursery])
}
