import { useWindowVirtualizer } from '@tanstack/react-virtual'
import { type ReactNode, useCallback, useLayoutEffect, useRef, useState } from 'react'
import { onRowKeys } from './row-keys.ts'

/** A list as long as it likes: only what is in sight is drawn. It scrolls with the page. */
export function VirtualList<T>({
  items,
  label,
  rowHeight,
  keyOf,
  children,
}: {
  readonly items: readonly T[]
  readonly label: string
  /** About how high a line is, until it is seen. */
  readonly rowHeight: (item: T) => number
  readonly keyOf: (item: T) => string
  readonly children: (item: T) => ReactNode
}) {
  const ref = useRef<HTMLUListElement>(null)
  const [top, setTop] = useState(0)
  useLayoutEffect(() => {
    const element = ref.current
    if (element === null) return
    const look = () => setTop(element.getBoundingClientRect().top + scrollY)
    look()
    // What stands above may grow and shrink.
    const page = new ResizeObserver(look)
    page.observe(document.body)
    return () => page.disconnect()
  }, [])
  // Asked by a new function, all places are reckoned anew: of thousands that is felt at every key.
  // biome-ignore lint/correctness/useExhaustiveDependencies: a list names its items in the same way throughout
  const getItemKey = useCallback((index: number) => keyOf(items[index]!), [items])
  const rows = useWindowVirtualizer({
    count: items.length,
    estimateSize: index => rowHeight(items[index]!),
    overscan: 6,
    scrollMargin: top,
    getItemKey,
  })
  return (
    <ul
      ref={ref}
      aria-label={label}
      data-rows
      style={{ blockSize: rows.getTotalSize(), position: 'relative' }}
      onKeyDown={onRowKeys}
    >
      {rows.getVirtualItems().map(({ key, index, start }) => (
        <li
          key={key}
          ref={rows.measureElement}
          data-index={index}
          aria-posinset={index + 1}
          aria-setsize={items.length}
          style={{ position: 'absolute', insetInline: 0, transform: `translateY(${start - top}px)` }}
        >
          {children(items[index]!)}
        </li>
      ))}
    </ul>
  )
}
