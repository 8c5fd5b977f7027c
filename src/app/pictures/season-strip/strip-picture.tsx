import { type KeyboardEvent, useRef, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { MethodMark } from '../../../trade/index.ts'
import { weekAfter, weeksBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekName } from '../../text/use-week-said.ts'
import './strip.css'
import { fitted } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { MarkStrokes } from '../marks/mark.tsx'
import { layOutStrip, monthsNamed, type StripRow, type StripStart } from './strip-layout.ts'

export interface NamedRow extends StripRow {
  /** Set by hand or not. */
  readonly starts: readonly (StripStart & { readonly isSet: boolean })[]
  readonly name: string
  readonly also: string
  readonly mark: MethodMark
}

/** Above the disc stands the name on a phone: its number goes to the side that has room. */
const besideDisc = (x: number, y: number, r: number, width: number) =>
  x + r + 48 < width
    ? ({ x: x + r + 5, y: y + 5, textAnchor: 'start' } as const)
    : ({ x: x - r - 5, y: y + 5, textAnchor: 'end' } as const)

/** The season: starts as discs on the weeks in which they may begin. Arrow keys go from disc to disc. */
export function StripPicture({
  title,
  says,
  rows,
  first,
  weeks,
  chosen,
  tried,
  onChoose,
}: {
  readonly title: string
  readonly says: string
  readonly rows: readonly NamedRow[]
  readonly first: string
  readonly weeks: number
  readonly chosen: string | null
  /** The week in which the chosen start is tried. */
  readonly tried: string | null
  /** A start, and the week into which it was dragged. */
  readonly onChoose: (start: string, tried: string | undefined) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const [hovered, setHovered] = useState<string | null>(null)
  /** A drag ends with a click, which is none. */
  const wasDragged = useRef(false)
  const weekText = useWeekName()

  const step = (event: KeyboardEvent<SVGSVGElement>): void => {
    const keys: Record<string, readonly [number, number]> = {
      ArrowRight: [0, 1],
      ArrowLeft: [0, -1],
      ArrowDown: [1, 0],
      ArrowUp: [-1, 0],
    }
    const way = keys[event.key]
    const from = (event.target as Element).getAttribute('data-start')
    if (way === undefined || from === null) return
    event.preventDefault()
    if (event.shiftKey && way[0] === 0) {
      const start = rows.flatMap(row => row.starts).find(({ id }) => id === from)!
      const week = weekAfter(from === chosen && tried !== null ? tried : start.week, way[1])
      if (weeksBetween(first, week) >= 0 && weeksBetween(first, week) < weeks) onChoose(from, week)
      return
    }
    const discs = [...event.currentTarget.querySelectorAll<SVGElement>('[data-start]')]
    const here = discs.find(disc => disc.getAttribute('data-start') === from)
    if (here === undefined) return
    const row = Number(here.getAttribute('data-row'))
    const [down, right] = way
    const next =
      down === 0
        ? discs[discs.indexOf(here) + right]
        : down > 0
          ? discs.find(disc => Number(disc.getAttribute('data-row')) > row)
          : discs.findLast(disc => Number(disc.getAttribute('data-row')) < row)
    next?.focus()
  }

  return (
    <Picture
      title={title}
      says={says}
      numbers={() => ({
        columns: [
          t('pictures.season.kind'),
          t('pictures.season.method'),
          t('pictures.season.week'),
          t('common.number'),
          t('pictures.season.by'),
        ],
        rows: rows.flatMap(row =>
          row.starts.map(start => [
            row.name,
            row.also,
            weekText(start.week),
            start.number,
            t(start.isSet ? 'pictures.season.set' : 'pictures.season.planned'),
          ]),
        ),
      })}
    >
      {width => {
        const layout = layOutStrip(rows, first, weeks, width)
        const numberOf = new Map(rows.flatMap(row => row.starts.map(start => [start.id, start] as const)))
        const skip = monthsNamed(layout.months.length, width - layout.left)
        const firstDisc = layout.rows.find(row => row.starts.length > 0)?.starts[0]?.id
        return (
          <svg
            className="strip"
            width={width}
            height={layout.height}
            role="group"
            aria-label={t('pictures.season.aria')}
            onKeyDown={step}
          >
            {layout.months.map(({ x, month, year }, place) => (
              <g key={`${year} ${month}`}>
                <path d={`M${x} 4V${layout.height}`} className="grid" />
                {place % skip === 0 && (
                  <text x={x + 4} y={14} className="soft">
                    {month === 0 ? year : format.month(month)}
                  </text>
                )}
              </g>
            ))}
            {layout.rows.map(({ y, windows, starts }, index) => {
              const row = rows[index]!
              return (
                <g key={row.id}>
                  <path d={`M0 ${y + (layout.isNarrow ? 15 : layout.lane / 2)}H${width}`} className="grid" />
                  <svg
                    x={0}
                    y={layout.isNarrow ? y - 33 : y - 11}
                    width={22}
                    height={22}
                    viewBox="0 0 34 34"
                    aria-hidden="true"
                  >
                    <MarkStrokes mark={row.mark} />
                  </svg>
                  <text x={30} y={layout.isNarrow ? y - 18 : y + 4} className="over-lines">
                    {fitted(row.name, layout.isNarrow ? 44 : 29)}
                    <title>{`${row.name}, ${row.also}`}</title>
                  </text>
                  {windows.map(run => (
                    <rect
                      key={run.from}
                      x={layout.x(run.from)}
                      y={y - 11}
                      width={layout.x(run.to) - layout.x(run.from)}
                      height={22}
                      className="strip-window"
                    />
                  ))}
                  {starts.map(({ id, x, r }) => {
                    const start = numberOf.get(id)!
                    const isShown = id === chosen || id === hovered
                    return (
                      <g
                        key={id}
                        role="button"
                        data-start={id}
                        data-row={index}
                        tabIndex={id === (chosen ?? firstDisc) ? 0 : -1}
                        aria-label={`${row.name}: ${t('pictures.season.start', { number: format.number(start.number), week: weekText(start.week) })}${start.isSet ? `, ${t('pictures.season.set')}` : ''}`}
                        aria-pressed={id === chosen}
                        className="strip-start"
                        onPointerDown={event => {
                          wasDragged.current = false
                          event.currentTarget.setPointerCapture(event.pointerId)
                        }}
                        onClick={() => {
                          if (!wasDragged.current) onChoose(id, undefined)
                          wasDragged.current = false
                        }}
                        onPointerUp={event => {
                          const box = event.currentTarget.ownerSVGElement!.getBoundingClientRect()
                          const at = layout.weekAt(event.clientX - box.left)
                          wasDragged.current = Math.abs(event.clientX - box.left - x) > Math.max(11, r)
                          if (wasDragged.current) onChoose(id, weekAfter(first, at))
                        }}
                        onKeyDown={event => {
                          if (event.key !== 'Enter' && event.key !== ' ') return
                          event.preventDefault()
                          onChoose(id, undefined)
                        }}
                        onPointerEnter={() => setHovered(id)}
                        onPointerLeave={() => setHovered(null)}
                        onFocus={() => setHovered(id)}
                        onBlur={() => setHovered(null)}
                      >
                        {id === chosen && tried !== null && tried !== start.week && (
                          <path
                            d={`M${x} ${y}H${layout.x(weeksBetween(first, tried) + 0.5)}m0 -8v16`}
                            className="strip-tried"
                          />
                        )}
                        <circle cx={x} cy={y} r={Math.max(11, r)} className="strip-touch" />
                        <circle
                          cx={x}
                          cy={y}
                          r={r}
                          className={id === chosen ? 'strip-disc chosen' : 'strip-disc'}
                        />
                        {start.isSet && <path d={`M${x - r} ${y + r + 3}h${2 * r}`} className="strip-set" />}
                        {isShown && (
                          <text
                            {...(layout.isNarrow
                              ? besideDisc(x, y, r, width)
                              : { x, y: y - r - 4, textAnchor: 'middle' as const })}
                            className="strong strip-number"
                          >
                            {format.number(start.number)}
                          </text>
                        )}
                      </g>
                    )
                  })}
                </g>
              )
            })}
          </svg>
        )
      }}
    </Picture>
  )
}
