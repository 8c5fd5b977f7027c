import { expect, test } from 'vitest'
import { inEnglish } from '../../trade/index.ts'
import { certain, finishedBatch, tinyKind, tinySeason } from '../fixtures/tiny-season.ts'
import type { Plan } from '../plan.ts'
import type { Match } from './match-stock.ts'
import { chosenStarts } from './planned.ts'
import { whySurer } from './why-surer.ts'

/** Two orders of pears, due in weeks 12 and 16, and one of figs; pears in trays of `tray`, no fewer than `smallest`. */
const season = (tray = 1, smallestBatch = 1) =>
  tinySeason({
    weeks: 20,
    kinds: [tinyKind('pear'), tinyKind('fig')],
    ways: [
      { kind: 0, steps: [{ ...certain(1), days: 7 }], tray, smallestBatch },
      { kind: 1, steps: [{ ...certain(1), days: 7 }] },
    ],
    batches: [finishedBatch(30, 1)],
    orders: [
      { kind: 0, number: 30, dueWeek: 12 },
      { kind: 0, number: 30, dueWeek: 16 },
      { kind: 1, number: 30, dueWeek: 12 },
    ],
  })
const from = (maker: Match['maker'], order: number, readyWeek: number, kind = 0): Match => ({
  kind,
  maker,
  taker: { what: 'order', order },
  number: 30,
  readyWeek,
  takenWeek: readyWeek,
})
const batch = { what: 'batch', batch: 0 } as const
const start = (index: number) => ({ what: 'start', start: index }) as const
const why = (
  of: ReturnType<typeof season>,
  begun: number,
  matches: readonly Match[],
  before: readonly { readonly id: string; readonly number: number }[] | null = null,
) => {
  const starts = chosenStarts(of, [
    { way: 0, week: 3, number: begun },
    { way: 0, week: 8, number: begun },
  ])
  const plan = before && ({ starts: before } as unknown as Plan)
  return whySurer({ season: of, starts, before: plan }, matches, 0).map(inEnglish)
}

test('what is filled from finished trees is sure because they are finished', () => {
  expect(why(season(), 30, [from(batch, 0, 0)])).toEqual([
    'It is filled from trees that are finished already.',
  ])
})

test('what is filled from batches that are still growing is surer because they give more than it asks for', () => {
  expect(why(season(), 30, [from(batch, 0, 5)])).toEqual([
    'The batches that stand already give more than it asks for.',
  ])
})

test('plants made for another order cover it where they are ready by its due week, and not where they come after it, or are of a kind that it does not accept', () => {
  const covers = 'Trees made for other orders of the same kind stand in for it.'
  const own = from(start(0), 0, 4)
  expect(why(season(), 30, [own, from(start(1), 1, 9)])).toEqual([covers])
  expect(why(season(), 30, [own, from(start(1), 1, 13)])).not.toContain(covers)
  expect(why(season(), 30, [own, from(start(1), 2, 9, 1)])).not.toContain(covers)
})

test('a start as small as may be begun is named before whole trays, and trays only where they hold more than one', () => {
  const own = [from(start(0), 0, 4)]
  const [smallest, trays] = [
    'The smallest batch that is begun makes more than it asks for.',
    'Whole trays make a little more than it asks for.',
  ]
  // No fewer than 45 in trays of 10 are 50.
  expect(why(season(10, 45), 50, own)).toEqual([smallest])
  expect(why(season(10, 45), 60, own)).toEqual([trays])
  expect(why(season(10, 10), 10, own)).toEqual([trays])
  expect(why(season(1, 1), 31, own)).not.toContain(trays)
})

test('a start that somebody set by hand is named', () => {
  const of = { ...season(), set: [{ way: 0, week: 3, number: 60 }] }
  const set = 'A start that was set by hand makes more than it asks for.'
  expect(why(of, 60, [from(start(0), 0, 4)])).toEqual([set])
  expect(why(of, 60, [from(start(1), 0, 9)])).not.toContain(set)
})

test('nothing of all that: its starts stand as they were shown, or no plan nearer to it was found', () => {
  const of = season()
  const own = [from(start(0), 0, 4)]
  const [first] = chosenStarts(of, [{ way: 0, week: 3, number: 31 }])
  const stay = 'Its starts stay as they were shown: to begin fewer would save little.'
  expect(why(of, 31, own, [{ id: first!.id, number: 31 }])).toEqual([stay])
  expect(why(of, 31, own, [{ id: first!.id, number: 30 }])).toEqual([
    'No plan nearer to what it asks for was found.',
  ])
  expect(why(of, 31, own)).toEqual(['No plan nearer to what it asks for was found.'])
})
