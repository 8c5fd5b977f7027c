import { type ReactNode, useId } from 'react'
import { useFormat } from '../../text/use-format.tsx'
import './load.css'
import { Hatch } from '../hatch.tsx'
import { monthMarks, monthsNamed } from '../season-strip/strip-layout.ts'
import type { LoadLayout } from './load-layout.ts'

/** Bars by week between an axis of numbers and the months; what goes too far is hatched. Lines are drawn into it. */
export function WeekBars({
  layout,
  first,
  width,
  label,
  role = 'img',
  children,
}: {
  readonly layout: LoadLayout
  readonly first: string
  readonly width: number
  readonly label: string
  /** A group where something in it can be moved. */
  readonly role?: 'img' | 'group'
  readonly children: ReactNode
}) {
  const format = useFormat()
  const hatch = useId()
  const months = monthMarks(first, layout.bars.length)
  const skip = monthsNamed(months.length, width - layout.left)
  return (
    <svg className="load" width={width} height={layout.height} role={role} aria-label={label}>
      <defs>
        <Hatch id={hatch} />
      </defs>
      {layout.numbers.map(number => (
        <g key={number}>
          <path d={`M${layout.left} ${layout.y(number)}H${width}`} className="grid" />
          <text x={layout.left - 6} y={layout.y(number) + 4} textAnchor="end" className="soft">
            {format.amount(number)}
          </text>
        </g>
      ))}
      {layout.bars.map((bar, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a bar is its week
        <g key={index}>
          <rect x={bar.x} y={bar.y} width={bar.width} height={bar.height} className="load-bar" />
          {bar.over > 0 && (
            <rect
              x={bar.x}
              y={bar.y - bar.over}
              width={bar.width}
              height={bar.over}
              fill={`url(#${hatch})`}
              className="too-much"
            />
          )}
        </g>
      ))}
      {children}
      {months.map(({ index, month, year }, place) =>
        place % skip === 0 ? (
          <text key={`${year} ${month}`} x={layout.x(index)} y={layout.height - 4} className="soft">
            {month === 0 ? year : format.month(month)}
          </text>
        ) : null,
      )}
    </svg>
  )
}
