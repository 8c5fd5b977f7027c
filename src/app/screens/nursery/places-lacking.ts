import type { NurseryView } from '../../../api/index.ts'
import { PlaceKind } from '../../../trade/index.ts'

/** Kinds of place that the ways of what is grown pass through and that no bench is. The block of mothers needs none. */
export const placesLacking = ({
  kinds,
  protocols,
  benches,
}: Pick<NurseryView, 'kinds' | 'protocols' | 'benches'>): readonly PlaceKind[] => {
  const used = new Set(kinds.flatMap(({ ways }) => ways.map(({ protocol }) => protocol)))
  const needed = new Set(
    protocols.filter(({ id }) => used.has(id)).flatMap(({ steps }) => steps.map(({ place }) => place)),
  )
  const there = new Set(benches.map(({ place }) => place))
  return PlaceKind.options.filter(place => place !== 'mother block' && needed.has(place) && !there.has(place))
}
