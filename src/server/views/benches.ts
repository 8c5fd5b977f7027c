import type { BenchView } from '../../api/index.ts'
import { benchFill, type Plan } from '../../planning/index.ts'
import type { Nursery } from '../../record/index.ts'
import { markOfMethod } from '../../trade/index.ts'

/** What stands on every bench in a week, named for the drawing. */
export const benchViews = (nursery: Nursery, plan: Plan | null, week: string, today: string): BenchView[] =>
  benchFill(nursery, plan, week, today).map(({ bench, areaSquareMetres, stands }) => ({
    bench,
    areaSquareMetres,
    stands: stands.map(({ batch, start, kind, method, step, stepId, number, squareMetres, expected }) => ({
      batch,
      start,
      name: batch === null ? '' : (nursery.batches.get(batch)?.name ?? batch),
      kindName: nursery.kinds.get(kind)?.name ?? kind,
      mark: markOfMethod(method),
      step,
      stepId,
      number,
      squareMetres,
      expected,
    })),
  }))
