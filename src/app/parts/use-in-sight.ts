import { type RefObject, useEffect, useRef } from 'react'

/** What was chosen comes into sight where it stands below the window, as on a phone; where it is seen nothing moves. */
export function useInSight<T extends HTMLElement>(chosen: string): RefObject<T | null> {
  const place = useRef<T>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked after anew when another is chosen
  useEffect(() => {
    // A page that was just opened is first put to its top.
    const frame = requestAnimationFrame(() => {
      const box = place.current?.getBoundingClientRect()
      if (box === undefined || box.top < innerHeight - SEEN_PIXELS) return
      place.current?.scrollIntoView({ block: box.height < innerHeight / 2 ? 'nearest' : 'start' })
    })
    return () => cancelAnimationFrame(frame)
  }, [chosen])
  return place
}

/** Less than this is hidden by the bar at the foot of a phone, or too little to notice. */
const SEEN_PIXELS = 160
