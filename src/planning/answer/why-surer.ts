import { type Phrase, phrase } from '../../trade/index.ts'
import type { Match } from './match-stock.ts'
import type { Planned } from './planned.ts'

/**
 * Why an order is surer than asked: because of what stands already, because plants made for others cover it, because a start
 * was set by hand, or because whole trays and smallest batches were rounded up; else its starts are those that people have seen.
 * @param matches whose plants go where, of all orders, at least of the kinds that it accepts
 */
export function whySurer(
  { season, starts, before }: Pick<Planned, 'season' | 'starts' | 'before'>,
  matches: readonly Match[],
  o: number,
): Phrase[] {
  const { kinds, dueWeek } = season.orders[o]!
  const own = matches.filter(({ taker }) => taker.what === 'order' && taker.order === o)
  if (own.length > 0 && own.every(({ maker }) => maker.what === 'batch'))
    return own.every(({ readyWeek }) => readyWeek === 0)
      ? [phrase('It is filled from trees that are finished already.')]
      : [phrase('The batches that stand already give more than it asks for.')]

  const accepts = new Set(kinds.map(({ kind }) => kind))
  const isCovered = matches.some(
    ({ taker, kind, readyWeek }) =>
      taker.what === 'order' && taker.order !== o && accepts.has(kind) && readyWeek <= dueWeek,
  )
  const made = [...new Set(own.flatMap(({ maker }) => (maker.what === 'start' ? [maker.start] : [])))].map(
    start => ({ ...starts[start]!, ...season.ways[starts[start]!.way]! }),
  )
  const isSmallest = made.some(
    ({ number, tray, smallestBatch }) =>
      smallestBatch > tray && number <= Math.ceil(smallestBatch / tray) * tray,
  )
  const isSet = made.some(({ way, week }) =>
    season.set?.some(start => start.way === way && start.week === week),
  )
  const reasons = [
    ...(isSet ? [phrase('A start that was set by hand makes more than it asks for.')] : []),
    ...(isCovered ? [phrase('Trees made for other orders of the same kind stand in for it.')] : []),
    ...(isSmallest ? [phrase('The smallest batch that is begun makes more than it asks for.')] : []),
    ...(!isSmallest && made.some(({ tray }) => tray > 1)
      ? [phrase('Whole trays make a little more than it asks for.')]
      : []),
  ]
  if (reasons.length > 0) return reasons
  const shown = new Map(before?.starts.map(({ id, number }) => [id, number]))
  return made.length > 0 && made.every(({ id, number }) => shown.get(id) === number)
    ? [phrase('Its starts stay as they were shown: to begin fewer would save little.')]
    : [phrase('No plan nearer to what it asks for was found.')]
}
