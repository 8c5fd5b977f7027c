import { useTranslation } from 'react-i18next'
import type { ProtocolSummary } from '../../../api/index.ts'
import { markOfMethod } from '../../../trade/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import './year-wheel.css'
import { Picture } from '../frame/picture.tsx'
import { Mark, MarkStrokes } from '../marks/mark.tsx'
import { windowSpans } from '../window-weeks.ts'
import { arcPath, monthOfDay, onWheel, weekArcs } from './wheel-layout.ts'

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

/** The year at this site: a ring for each protocol, drawn where it may begin; the hand is today. */
export function WheelPicture({
  title,
  says,
  protocols,
  today,
}: {
  readonly title: string
  readonly says: string
  readonly protocols: readonly ProtocolSummary[]
  readonly today: string
}) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <Picture
      title={title}
      says={says}
      numbers={() => ({
        columns: [t('pictures.year.method'), t('pictures.year.weeks'), t('pictures.year.condition')],
        rows: protocols.map(({ name, window: { months, condition } }) => [
          name,
          format.list(windowSpans(months, today).map(({ from, to }) => format.days(from, to))),
          condition,
        ]),
      })}
    >
      {width => {
        const size = Math.min(width, 620)
        const centre = size / 2
        const outer = centre - 26
        const inner = Math.max(44, outer * 0.24)
        const pitch = (outer - inner) / Math.max(1, protocols.length)
        const ring = Math.max(3, Math.min(15, pitch * 0.7))
        const shown = MARKS_IN_ORDER.filter(mark =>
          protocols.some(({ method }) => markOfMethod(method) === mark),
        )
        const [handX, handY] = onWheel(monthOfDay(today), outer + 4, centre)
        return (
          <>
            <svg className="wheel" width={size} height={size} role="img" aria-label={t('pictures.year.aria')}>
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
                    <title>{protocol.name}</title>
                  </g>
                )
              })}
              <path d={`M${centre} ${centre}L${handX} ${handY}`} className="wheel-hand" />
              <circle cx={centre} cy={centre} r={4} className="wheel-hub" />
            </svg>
            <ul className="wheel-legend">
              {shown.map(mark => (
                <li key={mark}>
                  <span style={{ background: INK[mark] }} aria-hidden="true" />
                  <Mark mark={mark} named size={24} />
                  {t(`trade.mark.${mark}`)}
                </li>
              ))}
            </ul>
          </>
        )
      }}
    </Picture>
  )
}
