import type { QueryClient } from '@tanstack/react-query'
import { whenIdle } from './when-idle.ts'

const AGAIN_MS = 250
const IDLE_AT_LATEST_MS = 5000

let lastTouched = 0
for (const touch of ['pointerdown', 'keydown'])
  addEventListener(
    touch,
    () => {
      lastTouched = performance.now()
    },
    { capture: true, passive: true },
  )

/** When for so long nobody has touched the page, nor a screen fetched anything. */
export const atLeisure = (queries: QueryClient, quietMs: number): Promise<void> =>
  new Promise(go => {
    let lastFetched = performance.now()
    const look = () =>
      whenIdle(() => {
        const now = performance.now()
        if (queries.isFetching() > 0) lastFetched = now
        if (now - Math.max(lastTouched, lastFetched) < quietMs) setTimeout(look, AGAIN_MS)
        else go()
      }, IDLE_AT_LATEST_MS)
    look()
  })
