import type { ReactNode } from 'react'

/** A yes or no, with its box before it. */
export function Tick({
  isOn,
  onTick,
  children,
}: {
  readonly isOn: boolean
  readonly onTick: (isOn: boolean) => void
  readonly children: ReactNode
}) {
  return (
    <label className="tick">
      <input type="checkbox" checked={isOn} onChange={event => onTick(event.target.checked)} />
      <span>{children}</span>
    </label>
  )
}
