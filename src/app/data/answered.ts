import type { QueryClient } from '@tanstack/react-query'

/** Until everything that was asked so far is answered, or is here from the last time. */
export const answered = (queries: QueryClient): Promise<void> =>
  new Promise(done => {
    const asked = queries.getQueryCache()
    const look = () => {
      if (asked.getAll().some(({ state }) => state.data === undefined && state.fetchStatus !== 'idle')) return
      stop()
      done()
    }
    const stop = asked.subscribe(look)
    look()
  })
