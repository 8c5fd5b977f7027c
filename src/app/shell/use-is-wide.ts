import { useSyncExternalStore } from 'react'

/** As the style sheets of the shell have it. */
const narrow = matchMedia('(max-width: 60rem)')

const listen = (tell: () => void): (() => void) => {
  narrow.addEventListener('change', tell)
  return () => narrow.removeEventListener('change', tell)
}

/** Whether the screens are listed beside the page, or in the bar under the thumb: only one of them is drawn. */
export const useIsWide = (): boolean => useSyncExternalStore(listen, () => !narrow.matches)
