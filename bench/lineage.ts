import { foldEntries, identityOf, lineageOf, type Ref, sharedGround } from '../src/record/index.ts'
import { BatchId } from '../src/trade/index.ts'
import { madeLog } from './made-log.ts'
import { medianSeconds } from './measure.ts'

/** Traces a mother, a rootstock batch and a tree in a nursery of 50,000 batches. Goal: each under 50 ms. */
export default async () => {
  const nursery = foldEntries(madeLog(50_000))
  const began = performance.now()
  const lineage = lineageOf(nursery)
  const secondsToIndex = (performance.now() - began) / 1000
  const mother: Ref = { what: 'mother', id: 'm7' }
  const rootstock: Ref = { what: 'batch', id: 'b20000' }
  const tree: Ref = { what: 'batch', id: 'b49999' }
  const infected = [mother, ...lineage.descendants(mother).reached.map(({ ref }) => ref)]
  const milliseconds = (task: () => unknown) => medianSeconds(task, 21, 5) * 1000
  return {
    figures: {
      batches: nursery.batches.size,
      secondsToIndexOnce: secondsToIndex,
      reachedFromOneMother: infected.length - 1,
      millisecondsDownFromMother: milliseconds(() => lineage.descendants(mother)),
      millisecondsDownFromRootstock: milliseconds(() => lineage.descendants(rootstock)),
      millisecondsUpFromTree: milliseconds(() => lineage.ancestors(tree)),
      millisecondsSharedGroundOfMother: milliseconds(() => sharedGround(nursery, infected)),
      millisecondsIdentity: milliseconds(() => identityOf(nursery, BatchId.parse('b49999'))),
    },
    rivals: {},
    notes: ['medians of 21 runs; goal: under 50 ms each, after the index is made once'],
  }
}
