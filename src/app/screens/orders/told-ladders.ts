import type { OrderForecast } from '../../../planning/index.ts'

type Ladder = Pick<OrderForecast['ladders'][number], 'rungs'>

/** The count-backs of an order that give it a tree at least; where all give less, those that begin with one. */
export const toldLadders = <L extends Ladder>(ladders: readonly L[]): readonly L[] => {
  const whole = ladders.filter(({ rungs }) => (rungs.at(-1)?.number ?? 0) >= 0.5)
  return whole.length > 0 ? whole : ladders.filter(({ rungs }) => rungs.some(({ number }) => number >= 0.5))
}
