import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef, useState } from 'react'
import type { BenchView } from '../../../api/index.ts'
import { asButton } from '../as-button.ts'

type Stand = BenchView['stands'][number]

/** What can be taken from a bench and put on another one. */
export interface Hand {
  readonly held: Stand | null
  readonly onTake: (stand: Stand) => void
  /** The bench under it while it is dragged. */
  readonly onAim: (bench: string | null) => void
  /** Let go over a bench, or over none. */
  readonly onPut: (bench: string | null) => void
}

/** Finished plants stand until they go out, and what is only expected is not there to be moved. */
export const isMovable = ({ batch, stepId, expected }: Stand): boolean =>
  batch !== null && stepId !== null && !expected

const isSame = (held: Stand | null | undefined, { batch, stepId }: Stand): boolean =>
  held?.batch === batch && held?.stepId === stepId

/** Fewer pixels are a press and no drag. */
const A_DRAG = 6
/** A finger that rests so long lifts the batch; one that moves sooner scrolls the page. */
const LONG_PRESS_MS = 450
/** Near the upper edge of the window the page comes down, so that every bench can be reached. */
const EDGE = 60
const EDGE_STEP = 16

const benchUnder = ({ clientX, clientY }: PointerEvent): string | null =>
  document
    .elementsFromPoint(clientX, clientY)
    .map(element => element.closest<SVGElement>('[data-bench]')?.dataset.bench)
    .find(bench => bench !== undefined) ?? null

const toThePlan = (): void => document.querySelector<SVGElement>('[data-bench]')?.focus()

/**
 * A batch on its bench: pressed it opens; dragged, or taken by the key M, it is put on another bench. A finger lifts it by
 * a long press: then it drags, or lets go where it was and leaves the batch in hand, to be put down by a touch.
 */
export function BenchBlock({
  label,
  stand,
  hand,
  onOpen,
  children,
}: {
  readonly label: string
  readonly stand: Stand
  readonly hand?: Hand
  readonly onOpen: () => void
  readonly children: ReactNode
}) {
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null)
  /** A drag ends with a click, which is none. */
  const wasDragged = useRef(false)
  const ground = useRef<SVGGElement>(null)
  const press = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)
  const isLifted = useRef(false)
  const [by, setBy] = useState<{ readonly x: number; readonly y: number } | null>(null)
  const { onKeyDown, ...button } = asButton(() => {
    if (!wasDragged.current) onOpen()
    wasDragged.current = false
  })

  useEffect(() => {
    const stay = (event: Event) => isLifted.current && event.preventDefault()
    const g = ground.current
    // React hears touches too late to keep the page from scrolling.
    g?.addEventListener('touchmove', stay, { passive: false })
    g?.addEventListener('contextmenu', stay)
    return () => {
      g?.removeEventListener('touchmove', stay)
      g?.removeEventListener('contextmenu', stay)
      clearTimeout(press.current)
    }
  }, [])

  const onPointerDown = (event: PointerEvent) => {
    wasDragged.current = false
    if (hand === undefined || event.button !== 0) return
    from.current = { x: event.pageX, y: event.pageY }
    if (event.pointerType !== 'touch') return event.currentTarget.setPointerCapture(event.pointerId)
    press.current = setTimeout(() => {
      isLifted.current = true
      wasDragged.current = true
      hand.onTake(stand)
    }, LONG_PRESS_MS)
  }
  const onPointerMove = (event: PointerEvent) => {
    if (from.current === null || hand === undefined) return
    const next = { x: event.pageX - from.current.x, y: event.pageY - from.current.y }
    if (by === null && Math.hypot(next.x, next.y) < A_DRAG) return
    if (event.pointerType === 'touch' && !isLifted.current) return clearTimeout(press.current)
    if (by === null && !isLifted.current) hand.onTake(stand)
    wasDragged.current = true
    setBy(next)
    hand.onAim(benchUnder(event))
    if (event.clientY < EDGE) window.scrollBy(0, -EDGE_STEP)
  }
  const letGo = (over: string | null) => {
    clearTimeout(press.current)
    isLifted.current = false
    if (by !== null) hand?.onPut(over)
    from.current = null
    setBy(null)
  }
  return (
    <g
      {...button}
      ref={ground}
      role="button"
      aria-label={label}
      className={isSame(hand?.held, stand) ? 'bench-open held' : 'bench-open'}
      {...(by && { transform: `translate(${by.x} ${by.y})` })}
      {...(hand && { 'aria-keyshortcuts': 'm' })}
      onKeyDown={(event: KeyboardEvent) => {
        onKeyDown(event)
        if (hand === undefined || event.key !== 'm' || event.ctrlKey || event.metaKey || event.altKey) return
        hand.onTake(stand)
        toThePlan()
      }}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={event => letGo(benchUnder(event))}
      onPointerCancel={() => letGo(null)}
    >
      {children}
    </g>
  )
}
