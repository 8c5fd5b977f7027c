import { dayNumber, dayText } from '../../../science/index.ts'
import { windowSpans } from '../window-weeks.ts'

export interface Arc {
  readonly from: number
  readonly to: number
}

/** Runs of months over the turn of the year: December and January are neighbours. Months from 0, `to` past the end. */
export const monthArcs = (months: readonly number[]): readonly Arc[] => {
  const open = new Set(months.map(month => month - 1))
  if (open.size === 0) return []
  if (open.size === 12) return [{ from: 0, to: 12 }]
  const arcs: Arc[] = []
  for (let month = 0; month < 12; month++) {
    if (!open.has(month) || open.has((month + 11) % 12)) continue
    let to = month + 1
    while (open.has(to % 12)) to += 1
    arcs.push({ from: month, to })
  }
  return arcs
}

/** The weeks of a window on the wheel of the year of today; what runs into the next year goes on past December. */
export const weekArcs = (months: readonly number[], today: string): readonly Arc[] => {
  if (months.length === 0 || months.length === 12) return [{ from: 0, to: 12 }]
  return windowSpans(months, today).map(span => {
    const from = monthOfDay(span.from)
    const to = monthOfDay(dayText(dayNumber(span.to) + 1))
    return { from, to: to < from ? to + 12 : to }
  })
}

/** A place on the wheel: January begins at the top, time goes with the clock. */
export const onWheel = (month: number, radius: number, centre: number): readonly [number, number] => {
  const angle = (month / 12) * 2 * Math.PI - Math.PI / 2
  return [centre + radius * Math.cos(angle), centre + radius * Math.sin(angle)]
}

const LEGEND_LINE = 20
/** Least widths of the columns of kinds, of marks, and of names. */
const LEGEND_COLUMNS = [210, 110, 300] as const

/** Where each group of the legend stands below the wheel: in as many columns as fit, column by column for the names. */
export const layOutLegend = (counts: readonly [number, number, number], width: number, top: number) => {
  let y = top + LEGEND_LINE
  const groups = counts.map((count, group) => {
    const columns = Math.max(1, Math.floor(width / LEGEND_COLUMNS[group]!))
    const rows = Math.ceil(count / columns)
    const room = width / columns
    const places = Array.from({ length: count }, (_, index) => ({
      x: Math.floor(index / rows) * room,
      y: y + (index % rows) * LEGEND_LINE,
      room: room - 30,
    }))
    y += rows * LEGEND_LINE + (count > 0 ? 8 : 0)
    return places
  })
  return { groups, height: y }
}

/** The path of an arc along a ring; a whole year is drawn as two halves. */
export const arcPath = ({ from, to }: Arc, radius: number, centre: number): string => {
  if (to - from >= 12)
    return `${arcPath({ from, to: from + 6 }, radius, centre)}${arcPath({ from: from + 6, to: from + 11.999 }, radius, centre)}`
  const [x0, y0] = onWheel(from, radius, centre)
  const [x1, y1] = onWheel(to, radius, centre)
  return `M${x0.toFixed(2)} ${y0.toFixed(2)}A${radius} ${radius} 0 ${to - from > 6 ? 1 : 0} 1 ${x1.toFixed(2)} ${y1.toFixed(2)}`
}

/** A day of the year as months since January: `2026-11-16` is 10.5. */
export const monthOfDay = (day: string): number => {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number]
  return month - 1 + (date - 1) / new Date(Date.UTC(year, month, 0)).getUTCDate()
}

/** Months are drawn from so cold to so warm, whatever the place: two wheels can be compared. */
const COLD = -5
const WARM = 30
const HUB = 8

/** The warmth of the months as a closed line about the hub, the farther out the warmer, each in the middle of its month. */
export const warmthPath = (meansCelsius: readonly number[], radius: number, centre: number): string => {
  const points = meansCelsius.map((celsius, month) => {
    const share = Math.min(1, Math.max(0, (celsius - COLD) / (WARM - COLD)))
    const [x, y] = onWheel(month + 0.5, HUB + share * (radius - HUB), centre)
    return `${x.toFixed(1)} ${y.toFixed(1)}`
  })
  return `M${points.join('L')}Z`
}
