/** A page that nobody sees paints nothing. */
const UNSEEN_MS = 100

/**
 * Until what has just changed is on the screen. Longer work that follows on a tap, such as drawing another view, is begun
 * after it, so that the tap is answered at once.
 */
export const painted = (): Promise<void> =>
  new Promise(seen => {
    const unseen = setTimeout(seen, UNSEEN_MS)
    requestAnimationFrame(() =>
      setTimeout(() => {
        clearTimeout(unseen)
        seen()
      }),
    )
  })
