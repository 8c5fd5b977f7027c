import { type RefObject, useEffect } from 'react'

/** Between a disc and what lies over the page above and below it. */
const APART = 24
const UNDER_TOP_BAR = 56

/**
 * Where what is told of a start stays at the foot of the window, the disc of that start stays in sight above it, and so does
 * any other that has the focus.
 */
export function useDiscInSight(start: string, told: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const clear = (disc: Element | null): void => {
      if (disc === null || told.current === null || getComputedStyle(told.current).position !== 'sticky')
        return
      const { top, bottom } = disc.getBoundingClientRect()
      const lowest = told.current.getBoundingClientRect().top - APART
      const highest = UNDER_TOP_BAR + APART
      if (bottom > lowest) scrollBy(0, bottom - lowest)
      else if (top < highest) scrollBy(0, top - highest)
    }
    // A page that was just opened is first put to its top, and its strip drawn.
    const frame = requestAnimationFrame(() =>
      clear(document.querySelector(`[data-start="${CSS.escape(start)}"]`)),
    )
    const onFocus = ({ target }: FocusEvent): void =>
      clear(target instanceof Element && target.hasAttribute('data-start') ? target : null)
    addEventListener('focusin', onFocus)
    return () => {
      cancelAnimationFrame(frame)
      removeEventListener('focusin', onFocus)
    }
  }, [start, told])
}
