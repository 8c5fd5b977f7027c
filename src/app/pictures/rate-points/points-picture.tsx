import { Fragment } from 'react'
import { useTranslation } from 'react-i18next'
import { useFormat } from '../../text/use-format.tsx'
import './rate-points.css'
import { asButton } from '../as-button.ts'
import { fitted, wrapped } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { linear } from '../scale.ts'

/** A share on its range: full where own records stand behind it, hollow where it is assumed, square where it was set. */
export interface PointsLane {
  readonly key: string
  readonly name: string
  /** Said once, over the first of the lanes that stand under the same. */
  readonly under?: string | undefined
  readonly share: number
  readonly low: number
  readonly high: number
  readonly sign: 'own' | 'assumed' | 'set'
  /** Said beside it. */
  readonly says: string
}

/** The name of a lane where its heading is not in sight. */
export const wholeName = ({ name, under }: Pick<PointsLane, 'name' | 'under'>): string =>
  under === undefined ? name : `${name} (${under})`

const LANE = 34
/** On a phone the name, what is said beside it and the range lie one under another. */
const TALL_LANE = 62
const LINE = 15
const HEADING = 32
const TOP = 22

/** Where each lane lies, with its name in as many lines as it takes, and where they end. */
function layLanes(lanes: readonly PointsLane[], isNarrow: boolean, letters: number) {
  let y = TOP
  const laid = lanes.map((lane, index) => {
    const lines = wrapped(lane.name, letters)
    const heading = lane.under !== lanes[index - 1]?.under ? lane.under : undefined
    if (heading !== undefined) y += HEADING
    const top = y
    const tall = (isNarrow ? TALL_LANE : LANE) + (lines.length - 1) * LINE
    y += tall
    return { lane, lines, heading, top, tall }
  })
  return { laid, bottom: y }
}

/** The stretch that holds all ranges and points, in steps of a fifth of the way from 0 to 100. */
const stretchOf = (lanes: readonly PointsLane[]): [number, number] => [
  Math.floor(Math.min(...lanes.map(({ low, share }) => Math.min(low, share))) * 5) / 5,
  Math.max(0.2, Math.ceil(Math.max(...lanes.map(({ high, share }) => Math.max(high, share))) * 5) / 5),
]

/** Shares as points on ranges, one lane each, with the same numbers as a table. */
export function PointsPicture({
  title,
  says,
  lanes,
  numbers,
  isClose = false,
  onChoose,
}: {
  readonly title: string
  readonly says: string | undefined
  readonly lanes: readonly PointsLane[]
  readonly numbers: Parameters<typeof Picture>[0]['numbers']
  /** Shows only the stretch in which the ranges lie, for small differences. */
  readonly isClose?: boolean
  readonly onChoose?: (key: string) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <Picture title={title} says={says} level={2} numbers={numbers}>
      {width => {
        const isNarrow = width < 760
        const left = isNarrow ? 8 : Math.min(400, Math.round(width * 0.36))
        const right = isNarrow ? width - 8 : width - 270
        const letters = isNarrow ? (width - 16) / 7 : (left - 14) / 6.6
        const { laid, bottom } = layLanes(lanes, isNarrow, Math.floor(letters))
        const [from, to] = isClose ? stretchOf(lanes) : [0, 1]
        const x = linear(from, to, left, right)
        return (
          <svg
            className="points"
            width={width}
            height={bottom + 6}
            role="group"
            aria-label={t('pictures.rates.aria')}
          >
            {[0, 1, 2, 3, 4].map(tick => {
              const share = from + ((to - from) * tick) / 4
              return (
                <g key={tick}>
                  <path d={`M${x(share)} ${TOP}V${bottom}`} className="grid" />
                  <text
                    x={x(share)}
                    y={13}
                    textAnchor={tick === 0 ? 'start' : tick === 4 ? 'end' : 'middle'}
                    className="soft"
                  >
                    {format.share(share)}
                  </text>
                </g>
              )
            })}
            {laid.map(({ lane, lines, heading, top, tall }) => {
              const { key, share, low, high, sign, says: beside } = lane
              const y = isNarrow ? top + tall - 16 : top + tall / 2
              const firstLine = isNarrow ? top + 20 : y + 4 - ((lines.length - 1) * LINE) / 2
              return (
                <Fragment key={key}>
                  {heading !== undefined && (
                    <text
                      x={isNarrow ? 8 : 0}
                      y={top - 8}
                      className={isNarrow ? 'strong over-lines' : 'strong'}
                    >
                      {heading}
                    </text>
                  )}
                  <g
                    {...(onChoose === undefined
                      ? { role: 'img' }
                      : { ...asButton(() => onChoose(key)), className: 'pressed' })}
                    aria-label={`${wholeName(lane)}: ${format.share(share)}, ${format.shareRange(low, high)}; ${beside}`}
                  >
                    <rect x={0} y={top} width={width} height={tall} className="pressed-lane" />
                    <text
                      textAnchor={isNarrow ? 'start' : 'end'}
                      {...(isNarrow && { className: 'over-lines' })}
                    >
                      {lines.map((line, at) => (
                        <tspan key={line} x={isNarrow ? 8 : left - 14} y={firstLine + at * LINE}>
                          {line}
                        </tspan>
                      ))}
                    </text>
                    <path
                      d={`M${x(low)} ${y}H${x(high)}`}
                      className={sign === 'assumed' ? 'rate-range assumed' : 'rate-range'}
                    />
                    {sign === 'set' ? (
                      <rect x={x(share) - 5} y={y - 5} width={10} height={10} className="rate-point" />
                    ) : (
                      <circle
                        cx={x(share)}
                        cy={y}
                        r={5.5}
                        className={sign === 'own' ? 'rate-point' : 'rate-point hollow'}
                      />
                    )}
                    <text
                      x={isNarrow ? 8 : right + 14}
                      y={isNarrow ? y - 11 : y + 4}
                      className="soft over-lines"
                    >
                      <tspan className="strong">{format.share(share)}</tspan> {fitted(beside, 34)}
                    </text>
                  </g>
                </Fragment>
              )
            })}
          </svg>
        )
      }}
    </Picture>
  )
}
