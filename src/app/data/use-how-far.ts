import { useQuery, useQueryClient } from '@tanstack/react-query'
import { useEffect } from 'react'
import type { LongJob } from '../../api/index.ts'
import { look } from './queries.ts'

/** How far a long answer has come, as the server tells it; null before it has told of this one. */
export const useHowFar = (of: LongJob, isRunning: boolean) => {
  const queries = useQueryClient()
  const { data } = useQuery(look.underWay(of))
  useEffect(() => {
    if (isRunning) queries.setQueryData(look.underWay(of).queryKey, null)
  }, [isRunning, of, queries])
  return data ?? null
}
