import { useEffect } from 'react'
import { pageHeading } from './page-heading.ts'

/** Whether the page is to take the focus: though something else has it, or only where nothing has. */
let isWanted: 'no' | 'where nothing has it' | 'in any case' = 'no'

const hasFocus = (): boolean => document.activeElement !== null && document.activeElement !== document.body

/** What the address points at, or else the heading of the page. */
const placeOfPage = (): HTMLElement | null => {
  const pointedAt = document.getElementById(location.hash.slice(1))
  if (pointedAt instanceof HTMLDetailsElement) pointedAt.open = true
  return pointedAt?.querySelector<HTMLElement>('summary, button, input') ?? pointedAt ?? pageHeading()
}

const takeFocus = (): void => {
  if (isWanted === 'no' || document.querySelector('[role="dialog"]') !== null) return
  const place = placeOfPage()
  if (place === null) return
  const isFree = isWanted === 'in any case' || !hasFocus()
  isWanted = 'no'
  if (!isFree) return
  if (place.tabIndex < 0) place.tabIndex = -1
  place.focus({ preventScroll: place === pageHeading() })
}

/** A dialog that closes gives the focus back by itself, a frame later. */
const settle = (): void => void requestAnimationFrame(() => requestAnimationFrame(takeFocus))

/** The page that has just been gone to takes the focus, wherever it was. */
export const focusPage = (): void => {
  isWanted = 'in any case'
  settle()
}

/**
 * Where what had the focus is gone, be it a form that was kept or the page itself, or cannot be pressed any longer, the
 * heading of the page takes it: without that, the next Tab would begin again at the top of the window.
 */
export const useKeptFocus = (): void => {
  useEffect(() => {
    let last: Element | null = null
    const onFocus = ({ target }: FocusEvent) => {
      last = target instanceof Element ? target : null
    }
    const changes = new MutationObserver(() => {
      const isShut = last?.matches(':disabled') ?? false
      if (last !== null && (isShut || !last.isConnected)) {
        last = null
        // What can no longer be pressed gives the focus up when the page is next drawn.
        if (isWanted === 'no' && (isShut || !hasFocus())) isWanted = 'where nothing has it'
      }
      if (isWanted !== 'no') settle()
    })
    addEventListener('focusin', onFocus)
    changes.observe(document.body, { subtree: true, childList: true, attributeFilter: ['disabled'] })
    return () => {
      removeEventListener('focusin', onFocus)
      changes.disconnect()
    }
  }, [])
}
