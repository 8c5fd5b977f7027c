import { useRouter, useSearch } from '@tanstack/react-router'

declare module '@tanstack/history' {
  interface HistoryState {
    /** Something was opened over the page that stands before in the history. */
    readonly opened?: boolean
  }
}

/**
 * What lies open over the page, by a name that stands in its address: a link reopens it, and going back closes it. Closing
 * goes back too, where it was opened from here, so that the history holds no page twice.
 */
export function useOpened(): readonly [string | null, (name: string | null) => void] {
  const router = useRouter()
  const { open } = useSearch({ strict: false })
  const put = (name: string | null): void => {
    if (name === null && router.state.location.state.opened) router.history.back()
    else
      void router.navigate({
        to: '.',
        search: ((was: object) => ({ ...was, open: name ?? undefined, tries: undefined })) as never,
        replace: name === null,
        resetScroll: false,
        ...(name !== null && { state: { opened: true } }),
      })
  }
  return [open ?? null, put]
}

/** The rest of a name that begins with a word: of `settle Q7`, asked for `settle`, it is `Q7`. */
export const openedOf = (opened: string | null, word: string): string | null =>
  opened?.startsWith(`${word} `) ? opened.slice(word.length + 1) : null
