import { dehydrate, hydrate, type QueryClient } from '@tanstack/react-query'
import { keptViews } from './device-store.ts'

const TOGETHER_MS = 1500

/** The last state seen, kept on this device, so that the app opens without the server. */
export const keepViews = async (queries: QueryClient): Promise<void> => {
  const kept = await keptViews.read().catch(() => undefined)
  if (kept !== undefined) hydrate(queries, kept)
  let isDue = false
  queries.getQueryCache().subscribe(event => {
    if (event.type !== 'updated' || event.action.type !== 'success' || isDue) return
    isDue = true
    setTimeout(() => {
      isDue = false
      const state = dehydrate(queries, { shouldDehydrateQuery: query => query.state.status === 'success' })
      keptViews.write(state).catch(() => undefined)
    }, TOGETHER_MS)
  })
  await queries.invalidateQueries({ refetchType: 'none' })
}
