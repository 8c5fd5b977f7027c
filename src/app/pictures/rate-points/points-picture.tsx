import { useTranslation } from 'react-i18next'
import { useFormat } from '../../text/use-format.tsx'
import './rate-points.css'
import { asButton } from '../as-button.ts'
import { fitted } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { linear } from '../scale.ts'

/** A share on its range: full where own records stand behind it, hollow where it is assumed, square where it was set. */
export interface PointsLane {
  readonly key: string
  readonly name: string
  readonly share: number
  readonly low: number
  readonly high: number
  readonly sign: 'own' | 'assumed' | 'set'
  /** Said beside it. */
  readonly says: string
}

const LANE = 34
const TOP = 22

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
  readonly says: string
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
        const lane = isNarrow ? 62 : LANE
        const letter = isNarrow ? 7 : 6.6
        const [from, to] = isClose ? stretchOf(lanes) : [0, 1]
        const x = linear(from, to, left, right)
        return (
          <svg
            className="points"
            width={width}
            height={TOP + lanes.length * lane + 6}
            role="group"
            aria-label={t('pictures.rates.aria')}
          >
            {[0, 1, 2, 3, 4].map(tick => {
              const share = from + ((to - from) * tick) / 4
              return (
                <g key={tick}>
                  <path d={`M${x(share)} ${TOP}V${TOP + lanes.length * lane}`} className="grid" />
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
            {lanes.map(({ key, name, share, low, high, sign, says: beside }, index) => {
              const y = TOP + index * lane + (isNarrow ? 46 : lane / 2)
              return (
                <g
                  key={key}
                  {...(onChoose === undefined
                    ? { role: 'img' }
                    : { ...asButton(() => onChoose(key)), className: 'pressed' })}
                  aria-label={`${name}: ${format.share(share)}, ${format.shareRange(low, high)}; ${beside}`}
                >
                  <rect x={0} y={TOP + index * lane} width={width} height={lane} className="pressed-lane" />
                  {isNarrow ? (
                    <text x={8} y={y - 26} className="over-lines">
                      {fitted(name, Math.floor((width - 16) / letter))}
                    </text>
                  ) : (
                    <text x={left - 14} y={y + 4} textAnchor="end">
                      {fitted(name, Math.floor((left - 14) / letter))}
                      <title>{name}</title>
                    </text>
                  )}
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
              )
            })}
          </svg>
        )
      }}
    </Picture>
  )
}
