/** Some browsers cannot say when they are idle. */
const USUALLY_IDLE_AFTER_MS = 200

/** Does what can wait once the page has nothing else to do, or after this time all the same. */
export const whenIdle = (work: () => void, atLatestMs: number): void => {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work, { timeout: atLatestMs })
  else setTimeout(work, USUALLY_IDLE_AFTER_MS)
}

const PIECE = 500
const PIECE_AT_LATEST_MS = 1000

/** Does something for each of many while the page is idle, a piece at a time. Call the result to leave the rest. */
export const eachWhenIdle = <T>(items: readonly T[], act: (item: T) => void): (() => void) => {
  let isLeft = false
  const next = (from: number): void => {
    if (isLeft || from >= items.length) return
    whenIdle(() => {
      if (isLeft) return
      for (const item of items.slice(from, from + PIECE)) act(item)
      next(from + PIECE)
    }, PIECE_AT_LATEST_MS)
  }
  next(0)
  return () => {
    isLeft = true
  }
}
