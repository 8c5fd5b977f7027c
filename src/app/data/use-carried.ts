import { useMutation } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import type { Carrying } from '../../api/index.ts'

/** A file on its way, or work on one: how far it is, and how it is stopped. What is stopped is no problem. */
export const useCarried = <Asked, T>(
  carry: (asked: Asked, by: Carrying) => Promise<T>,
  onSuccess?: (got: T) => void,
) => {
  const [share, setShare] = useState<number | null>(null)
  const stopping = useRef<AbortController>(undefined)
  const job = useMutation({
    mutationFn: (asked: Asked) => {
      stopping.current = new AbortController()
      setShare(null)
      return carry(asked, { signal: stopping.current.signal, told: setShare })
    },
    ...(onSuccess && { onSuccess }),
  })
  const isStopped = job.error !== null && stopping.current?.signal.aborted === true
  return {
    start: job.mutate,
    reset: job.reset,
    data: job.data,
    isPending: job.isPending,
    isSuccess: job.isSuccess,
    error: isStopped ? null : job.error,
    isStopped,
    share,
    stop: () => stopping.current?.abort(),
  }
}
