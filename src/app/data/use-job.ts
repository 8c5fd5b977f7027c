import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import type { PlanJob, PlanState } from '../../api/index.ts'
import { client } from './client.ts'
import { look } from './queries.ts'

/** The planning job: what it is doing, and how to begin and stop it. */
export const useJob = () => {
  const queries = useQueryClient()
  const { data } = useQuery(look.plan())
  const take = (job: PlanJob) =>
    queries.setQueryData<PlanState>(['plan'], was => (was === undefined ? was : { ...was, job }))
  const start = useMutation({ mutationFn: client.startPlan, onSuccess: take })
  const stop = useMutation({ mutationFn: client.stopPlan, onSuccess: take })
  return {
    job: data?.job ?? null,
    running: data?.job?.state === 'running',
    start: () => start.mutate(),
    stop: () => stop.mutate(),
    problem: start.error ?? stop.error,
  }
}
