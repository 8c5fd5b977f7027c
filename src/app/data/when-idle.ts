/** Some browsers cannot say when they are idle. */
const USUALLY_IDLE_AFTER_MS = 200

/** Does what can wait once the page has nothing else to do, or after this time all the same. */
export const whenIdle = (work: () => void, atLatestMs: number): void => {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work, { timeout: atLatestMs })
  else setTimeout(work, USUALLY_IDLE_AFTER_MS)
}
