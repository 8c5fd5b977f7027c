import type { QueryClient } from '@tanstack/react-query'
import type { PlanJob, PlanState } from '../../api/index.ts'
import { client } from './client.ts'
import { look } from './queries.ts'

/** Keeps every view as new as the log, and the planning job as new as its last word. */
export const hearServer = (queries: QueryClient): (() => void) => {
  let seen = -1
  let finished = ''
  const hearJob = (job: PlanJob): void => {
    queries.setQueryData<PlanState>(['plan'], was => (was === undefined ? was : { ...was, job }))
    if (job.state === 'running' || finished === job.id) return
    finished = job.id
    for (const view of [
      'plan',
      'season-plan',
      'order-planned',
      'orders',
      'work',
      'batch',
      'benches',
      'needs-look',
      'promise',
      'work-again',
      'what-if',
    ])
      void queries.invalidateQueries({ queryKey: [view] })
  }
  return client.listen(event => {
    if (event.event === 'job') hearJob(event.job)
    else if (event.event === 'under way') queries.setQueryData(look.underWay(event.of).queryKey, event)
    else if (event.event === 'day') void queries.invalidateQueries()
    else if (event.throughSeq !== seen) {
      if (seen !== -1) void queries.invalidateQueries()
      seen = event.throughSeq
    }
  })
}
