import { useLayoutEffect, useRef, useState } from 'react'

/** The width that a drawing has, in pixels, kept up with the window; 0 until it is known. */
export const useWidth = () => {
  const ref = useRef<HTMLDivElement>(null)
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const element = ref.current
    if (element === null) return
    const measure = () => setWidth(Math.floor(element.clientWidth))
    measure()
    const watch = new ResizeObserver(measure)
    watch.observe(element)
    return () => watch.disconnect()
  }, [])
  return [ref, width] as const
}
