import { QueryCache, QueryClient } from '@tanstack/react-query'
import { Refused } from '../../api/index.ts'
import { keepView } from './kept-views.ts'
import { outbox } from './outbox/use-outbox.ts'

/** Views stay good until the server says that the log has grown; a refusal is an answer and is not asked twice. */
export const queryClient = new QueryClient({
  queryCache: new QueryCache({
    onSuccess: () => outbox.heard(true),
    onError: problem => outbox.heard(problem instanceof Refused),
  }),
  defaultOptions: {
    queries: {
      networkMode: 'always',
      persister: keepView,
      staleTime: Number.POSITIVE_INFINITY,
      gcTime: 1000 * 60 * 60 * 24,
      refetchOnWindowFocus: false,
      retry: (failures, problem) => !(problem instanceof Refused) && failures < 2,
    },
  },
})
