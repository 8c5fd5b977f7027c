import { type KeyboardEvent, type PointerEvent, useRef } from 'react'

/** What moves a line up and down: a number, in its own unit. */
export interface Handle {
  readonly label: string
  /** Where it stands, in words. */
  readonly says: string
  readonly value: number
  readonly most: number
  readonly step: number
  /** How much the line rises for one more. */
  readonly rise: number
  readonly onMove: (value: number) => void
}

const HAND = 44
const STEPS_OF_A_PAGE = 10

/** A line that is taken by a grip at its end, or anywhere by the mouse, and dragged up and down; or moved by keys. */
export function LineHandle({
  line,
  x,
  y,
  perPixel,
  handle: { label, says, value, most, step, rise, onMove },
}: {
  readonly line: string
  readonly x: number
  readonly y: number
  /** How much of the line's own unit one pixel is. */
  readonly perPixel: number
  readonly handle: Handle
}) {
  const held = useRef<{ readonly from: number; readonly value: number; readonly perPixel: number } | null>(
    null,
  )
  const move = (to: number) => {
    const next = Math.min(most, Math.max(0, Math.round(to / step) * step))
    if (next !== value) onMove(next)
  }
  const onPointerMove = ({ clientY }: PointerEvent) => {
    if (held.current === null) return
    const { from, value: was, perPixel: each } = held.current
    move(was + ((from - clientY) * each) / rise)
  }
  const letGo = () => {
    held.current = null
  }
  const onKeyDown = (event: KeyboardEvent) => {
    const to: Record<string, number> = {
      ArrowUp: value + step,
      ArrowRight: value + step,
      ArrowDown: value - step,
      ArrowLeft: value - step,
      PageUp: value + STEPS_OF_A_PAGE * step,
      PageDown: value - STEPS_OF_A_PAGE * step,
      Home: 0,
      End: most,
    }
    const next = to[event.key]
    if (next === undefined) return
    event.preventDefault()
    move(next)
  }
  return (
    <g
      role="slider"
      tabIndex={0}
      aria-orientation="vertical"
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={most}
      aria-valuenow={value}
      aria-valuetext={says}
      className="load-handle"
      onKeyDown={onKeyDown}
      onPointerDown={event => {
        event.currentTarget.setPointerCapture(event.pointerId)
        held.current = { from: event.clientY, value, perPixel }
      }}
      onPointerMove={onPointerMove}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      <path d={line} className="load-hold" />
      <rect x={x - HAND / 2} y={y - HAND / 2} width={HAND} height={HAND} className="load-hand" />
      <rect x={x - 8} y={y - 11} width={16} height={22} rx={8} className="load-grip" />
      <path
        d={`M${x - 3.5} ${y - 3}l3.5 -4l3.5 4M${x - 3.5} ${y + 3}l3.5 4l3.5 -4`}
        className="load-arrows"
      />
    </g>
  )
}
