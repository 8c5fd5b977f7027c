import { type ReactNode, useEffect, useRef } from 'react'

/**
 * What is told of a thing that is chosen on the page, in a place of its own beside it. Just chosen, it takes the focus on its
 * heading, so that it is not a whole list away; Escape there gives it back to what was chosen.
 */
export function Told({
  chosen,
  className,
  children,
}: {
  readonly chosen: string | null
  readonly className: string
  readonly children: ReactNode
}) {
  const place = useRef<HTMLElement>(null)
  const before = useRef(chosen)
  const chooser = useRef<HTMLElement | SVGElement | null>(null)
  useEffect(() => {
    const isNew = chosen !== null && chosen !== before.current
    before.current = chosen
    const from = document.activeElement
    const isChosenHere = from?.matches('#page :is([aria-current], [aria-pressed="true"])') ?? false
    if (!isNew || !isChosenHere) return
    chooser.current = from as HTMLElement | SVGElement
    /** Done once there is a heading, or where the focus went elsewhere meanwhile. */
    const isSettled = (): boolean => {
      const heading = place.current?.querySelector<HTMLElement>('[data-names-page]')
      if (document.activeElement !== from) return true
      if (heading === null || heading === undefined) return false
      heading.tabIndex = -1
      heading.focus()
      return true
    }
    if (isSettled()) return
    const changes = new MutationObserver(() => isSettled() && changes.disconnect())
    changes.observe(place.current!, { subtree: true, childList: true })
    return () => changes.disconnect()
  }, [chosen])
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape goes back, wherever in it the focus is
    <section
      ref={place}
      className={className}
      aria-live="polite"
      onKeyDown={event => {
        const isHere = place.current?.contains(event.target as Node) ?? false
        if (event.key === 'Escape' && isHere && !event.defaultPrevented) chooser.current?.focus()
      }}
    >
      {children}
    </section>
  )
}
