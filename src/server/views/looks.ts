import type { BandPoint } from '../../api/index.ts'
import {
  couldBePromised,
  expectedBand,
  fullBenches,
  type HowFar,
  type MoveAsked,
  type Plan,
  type PlanBeside,
  type PromiseAsked,
  readRateBook,
  startMoved,
  workAgain,
} from '../../planning/index.ts'
import type { Nursery } from '../../record/index.ts'
import type { BatchId } from '../../trade/index.ts'
import { needsLook } from './needs-look.ts'
import { rateRows } from './rates.ts'
import { ratesCompared } from './rates-compared.ts'

/** Of a plan only what a look rests on: the whole of a large one is long to hand over. */
export type PlanSeen = Pick<Plan, 'orders'>

const bandOf = (nursery: Nursery, today: string, id: BatchId): readonly BandPoint[] => {
  const batch = nursery.batches.get(id)
  const protocol = batch && nursery.protocols.get(batch.protocol)
  return !batch || !protocol ? [] : expectedBand(readRateBook(nursery, today), protocol, batch)
}

/** What takes long to work out of a large record: mostly what rests on rates. */
export const looks = {
  rates: (nursery: Nursery, today: string) => rateRows(nursery, today),
  ratesCompared: (nursery: Nursery, today: string) => ratesCompared(nursery, today),
  needsLook: (nursery: Nursery, today: string) => needsLook(nursery, today),
  fullBenches: (
    nursery: Nursery,
    today: string,
    of: { readonly starts: Plan['starts']; readonly weeks: number },
  ) => fullBenches(nursery, of, today, of.weeks),
  band: (nursery: Nursery, today: string, batch: BatchId) => bandOf(nursery, today, batch),
  workAgain: (nursery: Nursery, today: string, of: { readonly batch: BatchId; readonly plan: PlanSeen }) =>
    workAgain(nursery, of.plan, of.batch, today),
  promise: (
    nursery: Nursery,
    today: string,
    { plan, asked }: { readonly plan: PlanBeside; readonly asked: Omit<PromiseAsked, 'today'> },
    tell?: HowFar,
  ) => couldBePromised(nursery, plan, { ...asked, today }, tell),
  startMoved: (
    nursery: Nursery,
    today: string,
    { plan, asked }: { readonly plan: PlanBeside; readonly asked: Omit<MoveAsked, 'today'> },
    tell?: HowFar,
  ) => startMoved(nursery, plan, { ...asked, today }, tell),
}
export type Looks = typeof looks
export type Look = keyof Looks
/** What a look is asked about, beside the nursery and the day. */
export type AskedOf<L extends Look> =
  Parameters<Looks[L]> extends readonly [Nursery, string, infer Of, ...unknown[]] ? Of : null
