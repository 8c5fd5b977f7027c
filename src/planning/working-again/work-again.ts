import type { Nursery } from '../../record/index.ts'
import { dateOf, dayNumber, weekText } from '../../science/index.ts'
import type { BatchId, OrderId, StepId } from '../../trade/index.ts'
import type { Plan } from '../plan.ts'
import { readRateBook } from '../rates/read-rate-book.ts'
import { seasonOf } from '../reading/season-of.ts'
import { takeTiming } from './take-curve-of.ts'
import { type StillToCome, undecidedThatTake } from './undecided.ts'
import { worthWorkingAgain } from './worth-working-again.ts'

/** A batch with failures or undecided plants: what still takes, and whether to work the failed stocks again. */
export interface WorkAgain {
  readonly batch: BatchId
  readonly step: StepId
  readonly undecided: number
  readonly stillTake: StillToCome
  /** Batches of the nursery whose looks say when such plants take; 0: the protocol's days do. */
  readonly timedByBatches: number
  /** Stocks of which the work failed so far; the count holds if they live. 0 of cuttings, layers and seed: nothing is left of them. */
  readonly failed: number
  /** How many to work again now, the trees that come of it, and what that is worth, costs taken off. */
  readonly number: number
  readonly trees: number
  readonly worth: number
  readonly cost: number
  /** Until which week it still helps an order; null when it helps none. */
  readonly lastWeek: string | null
  readonly helps: readonly { readonly order: OrderId; readonly lastWeek: string; readonly trees: number }[]
}

/** Null where the batch was not yet counted in its first step, or no plant is undecided and no stock failed. */
export function workAgain(
  nursery: Nursery,
  plan: Pick<Plan, 'orders'>,
  id: BatchId,
  today: string,
): WorkAgain | null {
  const batch = nursery.batches.get(id)
  const protocol = batch && nursery.protocols.get(batch.protocol)
  const first = protocol?.steps[0]
  const outcome = batch?.outcomes.find(({ step }) => step === first?.id)
  const look = outcome?.looks.at(-1)
  if (!batch || !protocol || !first || !outcome || !look) return null
  const dead = outcome.looks.reduce((sum, look) => sum + look.dead, 0)
  const failed = protocol.takes.some(({ what }) => what === 'rootstock') ? dead : 0
  const standing = batch.portions
    .filter(({ step }) => step === first.id)
    .reduce((sum, { number }) => sum + number, 0)
  const undecided = Math.min(look.undecided, standing)
  if (failed === 0 && undecided === 0) return null

  const startMonth = dateOf(dayNumber(batch.startedOn)).month
  const timing = takeTiming(nursery, protocol, first)
  const stillTake = undecidedThatTake(
    timing,
    readRateBook(nursery, today).survival(protocol, 0, { kind: batch.kind, startMonth }),
    Math.max(0, dayNumber(today) - dayNumber(outcome.firstEntered)),
    { taken: standing - undecided + outcome.left, dead, undecided },
  )
  const season = seasonOf(nursery, today)
  const way = season.ways.findIndex(
    ({ kind, protocol: by }) => by.id === protocol.id && season.kinds[kind]!.id === batch.kind,
  )
  const found =
    way < 0
      ? { number: 0, trees: 0, worth: 0, cost: 0, helps: [], lastWeek: null }
      : worthWorkingAgain(
          season,
          way,
          failed,
          plan.orders.flatMap(({ order, late, short }) => {
            const index = season.orders.findIndex(({ id: known }) => known === order)
            return index < 0 ? [] : [{ order: index, late, short }]
          }),
        )
  const named = (week: number) => weekText(season.firstWeek + week)
  return {
    batch: id,
    step: first.id,
    undecided,
    stillTake,
    timedByBatches: timing.batches,
    failed,
    ...found,
    lastWeek: found.lastWeek === null ? null : named(found.lastWeek),
    helps: found.helps.map(({ order, lastWeek, trees }) => ({
      order: season.orders[order]!.id,
      lastWeek: named(lastWeek),
      trees,
    })),
  }
}
