import type { QueryPersister } from '@tanstack/react-query'
import { keptViews } from './device-store.ts'

const TOGETHER_MS = 1500
const KEPT_DAYS = 60

const due = new Set<string>()

/**
 * The last answer to every question, kept on this device, so that the app opens without the server. The server is asked
 * at once; what was kept is shown until it answers. A question whose `meta` says `kept: false` is not kept.
 */
export const keepView: QueryPersister = async (ask, context, query) => {
  if (query.meta?.kept === false) return ask(context)
  const { queryHash } = query
  if (query.state.data === undefined)
    void keptViews
      .read(queryHash)
      .then(kept => {
        if (kept !== undefined && query.state.data === undefined)
          query.setState({ data: kept.data, dataUpdatedAt: kept.at, status: 'success' })
      })
      .catch(() => undefined)
  const answer = await ask(context)
  if (!due.has(queryHash)) {
    due.add(queryHash)
    setTimeout(() => {
      due.delete(queryHash)
      const { data, dataUpdatedAt: at } = query.state
      keptViews.write(queryHash, { data, at }).catch(() => undefined)
    }, TOGETHER_MS)
  }
  return answer
}

/** Answers that nobody has looked at for long make room. */
export const clearOldViews = (): void =>
  void keptViews.forgetBefore(Date.now() - KEPT_DAYS * 86_400_000).catch(() => undefined)
