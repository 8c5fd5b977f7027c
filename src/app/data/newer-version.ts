import { registerSW } from 'virtual:pwa-register'
import { useSyncExternalStore } from 'react'

/**
 * The pages themselves are kept on this device, so that they open without the server. A newer version that the server
 * has waits until the person takes it: nobody is thrown off a half-filled form.
 */

let isWaiting = false
let take: () => void = () => undefined
const listeners = new Set<() => void>()

export const keepPages = (): void => {
  const update = registerSW({
    onNeedRefresh: () => {
      isWaiting = true
      for (const tell of listeners) tell()
    },
  })
  take = () => void update()
}

/** Loads the newer version in the place of this one; what waits in the outbox stays on the device. */
export const takeNewerVersion = (): void => take()

export const useNewerVersion = (): boolean =>
  useSyncExternalStore(
    tell => {
      listeners.add(tell)
      return () => listeners.delete(tell)
    },
    () => isWaiting,
  )
