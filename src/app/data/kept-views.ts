import type { Query, QueryPersister } from '@tanstack/react-query'
import { keptViews } from './device-store.ts'
import { whenIdle } from './when-idle.ts'

const TOGETHER_MS = 1500
const AT_LATEST_MS = 20_000
const KEPT_DAYS = 60

const due = new Set<string>()

/** As text: a large answer is so written in a third of the time that its parts would take, and no tap waits for it. */
const keep = ({ queryHash, state: { data, dataUpdatedAt: at } }: Query): void => {
  due.delete(queryHash)
  if (data !== undefined)
    keptViews.write(queryHash, { json: JSON.stringify(data), at }).catch(() => undefined)
}

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
          query.setState({ data: JSON.parse(kept.json), dataUpdatedAt: kept.at, status: 'success' })
      })
      .catch(() => undefined)
  const answer = await ask(context)
  if (!due.has(queryHash)) {
    due.add(queryHash)
    setTimeout(() => whenIdle(() => keep(query), AT_LATEST_MS), TOGETHER_MS)
  }
  return answer
}

/** Answers that nobody has looked at for long make room. */
export const clearOldViews = (): void =>
  void keptViews.forgetBefore(Date.now() - KEPT_DAYS * 86_400_000).catch(() => undefined)
