import { useTranslation } from 'react-i18next'
import type { ProtocolSummary } from '../../../api/index.ts'
import { markOfMethod, WindowKind, windowKind } from '../../../trade/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import './year-wheel.css'
import { fitted } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { MarkStrokes } from '../marks/mark.tsx'
import { windowSpans } from '../window-weeks.ts'
import { arcPath, layOutLegend, monthOfDay, onWheel, warmthPath, weekArcs } from './wheel-layout.ts'

/** Closer than so many pixels the lines of the rings would run together to a grey ground. */
const ROOM_FOR_LINES = 6

/** One colour and one line for each mark, so that rings are told apart without colour too. */
const INK = {
  seed: 'var(--data-orange)',
  cutting: 'var(--data-blue)',
  layer: 'var(--data-vermilion)',
  graft: 'var(--data-green)',
  bud: 'var(--data-sky)',
  division: 'var(--data-purple)',
} as const

const MARKS_IN_ORDER = Object.keys(INK) as readonly (keyof typeof INK)[]

const MONTHS = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] as const

/** What a window waits for is told by its line too. */
const DASH: Readonly<Record<WindowKind, string>> = {
  seed: '2 3',
  wood: 'none',
  bark: '14 4',
  heat: '6 3 1 3',
}

export type WheelRing = Pick<ProtocolSummary, 'id' | 'name' | 'method' | 'window'>

/** Rings that stand closer have no room for their numbers. */
const NUMBERED_PITCH = 10

/** The year at this site: a ring for each protocol, drawn where it may begin; the hand is today. Its legend is in it. */
export function WheelPicture({
  title,
  says,
  protocols,
  today,
  warmth,
}: {
  readonly title: string
  readonly says: string
  /** Usual mean of each month in degrees Celsius, January first; null where nobody can tell. */
  readonly warmth: readonly number[] | null
  readonly protocols: readonly WheelRing[]
  readonly today: string
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const weeksOf = ({ window }: WheelRing) =>
    format.list(windowSpans(window.months, today).map(({ from, to }) => format.days(from, to)))
  const degrees = (celsius: number) => format.measure(Math.round(celsius) + 0, '°C')
  const kindOf = ({ method }: WheelRing) => t(`year.kinds.${windowKind(method)}`)
  return (
    <Picture
      title={title}
      says={says}
      numbers={() => ({
        columns: [
          t('pictures.year.method'),
          t('pictures.year.waitsFor'),
          t('pictures.year.weeks'),
          t('pictures.year.condition'),
        ],
        rows: [
          ...protocols.map(ring => [
            ring.name,
            kindOf(ring),
            weeksOf(ring),
            format.sentence(term(ring.window.condition)),
          ]),
          ...(warmth === null
            ? []
            : [
                [
                  t('year.warmth.name'),
                  '',
                  '',
                  MONTHS.map(month => `${format.month(month)} ${degrees(warmth[month]!)}`).join(', '),
                ],
              ]),
        ],
      })}
    >
      {width => {
        const size = Math.min(width, 620)
        const centre = size / 2
        const outer = centre - 26
        const inner = Math.max(58, outer * 0.3)
        const pitch = (outer - inner) / Math.max(1, protocols.length)
        const ring = Math.max(3, Math.min(15, pitch * 0.7))
        const marks = MARKS_IN_ORDER.filter(mark =>
          protocols.some(({ method }) => markOfMethod(method) === mark),
        )
        const kinds = WindowKind.options.filter(kind =>
          protocols.some(({ method }) => windowKind(method) === kind),
        )
        const legend = layOutLegend(
          [kinds.length, marks.length, protocols.length],
          width,
          size + (warmth === null ? 18 : 44),
        )
        const [handX, handY] = onWheel(monthOfDay(today), outer + 4, centre)
        return (
          <svg
            className="wheel"
            width={width}
            height={legend.height}
            role="img"
            aria-label={`${t('pictures.year.aria')}. ${protocols
              .map(ring => `${ring.name}, ${kindOf(ring)}: ${weeksOf(ring)}`)
              .join('; ')}`}
          >
            <g transform={`translate(${(width - size) / 2} 0)`}>
              {MONTHS.map(month => {
                const [x0, y0] = onWheel(month, inner - 12, centre)
                const [x1, y1] = onWheel(month, outer + 4, centre)
                const [tx, ty] = onWheel(month + 0.5, outer + 14, centre)
                return (
                  <g key={month}>
                    <path d={`M${x0} ${y0}L${x1} ${y1}`} className="grid" />
                    <text x={tx} y={ty + 4} textAnchor="middle" className="soft">
                      {size < 420 ? format.narrowMonth(month) : format.month(month)}
                    </text>
                  </g>
                )
              })}
              {protocols.map((protocol, index) => {
                const radius = outer - pitch * (index + 0.5)
                const mark = markOfMethod(protocol.method)
                const arcs = weekArcs(protocol.window.months, today)
                return (
                  <g key={protocol.id}>
                    {pitch >= ROOM_FOR_LINES && (
                      <circle cx={centre} cy={centre} r={radius} className="grid" />
                    )}
                    {arcs.map(arc => {
                      const [x, y] = onWheel((arc.from + arc.to) / 2, radius, centre)
                      return (
                        <g key={arc.from}>
                          <path
                            d={arcPath(arc, radius, centre)}
                            className="wheel-arc"
                            stroke={INK[mark]}
                            strokeWidth={ring}
                            strokeDasharray={DASH[windowKind(protocol.method)]}
                          />
                          {pitch >= 13 && (
                            <>
                              <circle cx={x} cy={y} r={10} className="wheel-ground" />
                              <svg
                                x={x - 8}
                                y={y - 8}
                                width={16}
                                height={16}
                                viewBox="0 0 34 34"
                                aria-hidden="true"
                              >
                                <MarkStrokes mark={mark} />
                              </svg>
                            </>
                          )}
                        </g>
                      )
                    })}
                    {pitch >= NUMBERED_PITCH && (
                      <text x={centre + 3} y={centre - radius + 4} className="wheel-number strong">
                        {format.number(index + 1)}
                      </text>
                    )}
                    <title>{protocol.name}</title>
                  </g>
                )
              })}
              {warmth !== null && (
                <path d={warmthPath(warmth, inner - 14, centre)} className="wheel-warmth" />
              )}
              <path d={`M${centre} ${centre}L${handX} ${handY}`} className="wheel-hand" />
              <circle cx={centre} cy={centre} r={4} className="wheel-hub" />
            </g>
            {warmth !== null && (
              <g>
                <rect x={0} y={size + 16} width={34} height={10} className="wheel-warmth" />
                <text x={42} y={size + 26}>
                  {t('year.warmth.range', {
                    coldest: degrees(Math.min(...warmth)),
                    low: format.month(warmth.indexOf(Math.min(...warmth))),
                    warmest: degrees(Math.max(...warmth)),
                    high: format.month(warmth.indexOf(Math.max(...warmth))),
                  })}
                </text>
              </g>
            )}
            {kinds.map((kind, index) => {
              const { x, y } = legend.groups[0]![index]!
              return (
                <g key={kind}>
                  <path
                    d={`M${x} ${y - 4}h34`}
                    className="wheel-arc wheel-kind"
                    strokeWidth={8}
                    strokeDasharray={DASH[kind]}
                  />
                  <text x={x + 42} y={y}>
                    {t(`year.kinds.${kind}`)}
                  </text>
                </g>
              )
            })}
            {marks.map((mark, index) => {
              const { x, y } = legend.groups[1]![index]!
              return (
                <g key={mark}>
                  <rect x={x} y={y - 11} width={12} height={12} fill={INK[mark]} />
                  <svg x={x + 18} y={y - 14} width={18} height={18} viewBox="0 0 34 34" aria-hidden="true">
                    <MarkStrokes mark={mark} />
                  </svg>
                  <text x={x + 42} y={y}>
                    {t(`trade.mark.${mark}`)}
                  </text>
                </g>
              )
            })}
            {protocols.map((protocol, index) => {
              const { x, y, room } = legend.groups[2]![index]!
              return (
                <text key={protocol.id} x={x} y={y} className="wheel-name">
                  <tspan className="strong">{format.number(index + 1)}</tspan>
                  <tspan dx={6}>
                    {fitted(
                      `${protocol.name} (${t(`year.kind.${windowKind(protocol.method)}`)})`,
                      Math.floor(room / 6.2),
                    )}
                  </tspan>
                </text>
              )
            })}
          </svg>
        )
      }}
    </Picture>
  )
}
