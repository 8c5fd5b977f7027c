import { useTranslation } from 'react-i18next'
import type { RateRow } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.ts'
import './rate-points.css'
import { Picture } from '../frame/picture.tsx'
import { linear } from '../scale.ts'

const LANE = 34
const TOP = 22

/** Rates as points on the range that holds nine of ten next batches. */
export function RatePicture({
  title,
  says,
  rows,
  nameOf,
  onChoose,
}: {
  readonly title: string
  readonly says: string
  readonly rows: readonly RateRow[]
  readonly nameOf: (row: RateRow) => string
  readonly onChoose: (row: RateRow) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const sourceOf = ({ from, batches, survived, entered, basis }: RateRow): string =>
    from === 'records'
      ? t('rates.batches', {
          count: batches,
          shown: format.number(batches),
          survived: format.number(survived),
          entered: format.number(entered),
        })
      : t(from === 'facts' ? 'rates.assumed' : 'rates.set', { basis })

  return (
    <Picture
      title={title}
      says={says}
      level={2}
      numbers={() => ({
        columns: [
          t('rates.column.kind'),
          `${t('rates.column.rate')} %`,
          `${t('rates.column.low')} %`,
          `${t('rates.column.high')} %`,
          t('rates.column.entered'),
          t('rates.column.survived'),
          t('rates.column.source'),
        ],
        rows: rows.map(row => [
          nameOf(row),
          Math.round(1000 * row.mean) / 10,
          Math.round(1000 * row.low) / 10,
          Math.round(1000 * row.high) / 10,
          row.entered,
          row.survived,
          [sourceOf(row), ...row.sources].join('; '),
        ]),
      })}
    >
      {width => {
        const isNarrow = width < 760
        const left = isNarrow ? 8 : 300
        const right = isNarrow ? width - 8 : width - 270
        const lane = isNarrow ? 62 : LANE
        const x = linear(0, 1, left, right)
        return (
          <svg
            width={width}
            height={TOP + rows.length * lane + 6}
            role="group"
            aria-label={t('pictures.rates.aria')}
          >
            {[0, 0.25, 0.5, 0.75, 1].map(share => (
              <g key={share}>
                <path d={`M${x(share)} ${TOP}V${TOP + rows.length * lane}`} className="grid" />
                <text
                  x={x(share)}
                  y={13}
                  textAnchor={share === 0 ? 'start' : share === 1 ? 'end' : 'middle'}
                  className="soft"
                >
                  {format.share(share)}
                </text>
              </g>
            ))}
            {rows.map((row, index) => {
              const y = TOP + index * lane + (isNarrow ? 46 : lane / 2)
              const name = nameOf(row)
              return (
                <g
                  key={`${row.kind} ${row.protocol} ${row.step}`}
                  role="button"
                  tabIndex={0}
                  className="rate-open"
                  aria-label={`${name}: ${format.share(row.mean)}, ${format.shareRange(row.low, row.high)}; ${sourceOf(row)}`}
                  onClick={() => onChoose(row)}
                  onKeyDown={event => {
                    if (event.key !== 'Enter' && event.key !== ' ') return
                    event.preventDefault()
                    onChoose(row)
                  }}
                >
                  <rect x={0} y={TOP + index * lane} width={width} height={lane} className="rate-lane" />
                  {isNarrow ? (
                    <text x={8} y={y - 26}>
                      {name.slice(0, Math.floor(width / 7))}
                    </text>
                  ) : (
                    <text x={left - 14} y={y + 4} textAnchor="end">
                      {name.length > 42 ? `${name.slice(0, 41)}…` : name}
                      <title>{name}</title>
                    </text>
                  )}
                  <path
                    d={`M${x(row.low)} ${y}H${x(row.high)}`}
                    className={row.from === 'facts' ? 'rate-range assumed' : 'rate-range'}
                  />
                  {row.from === 'set by the nursery' ? (
                    <rect x={x(row.mean) - 5} y={y - 5} width={10} height={10} className="rate-point" />
                  ) : (
                    <circle
                      cx={x(row.mean)}
                      cy={y}
                      r={5.5}
                      className={row.from === 'records' ? 'rate-point' : 'rate-point hollow'}
                    />
                  )}
                  <text x={isNarrow ? 8 : right + 14} y={isNarrow ? y - 11 : y + 4} className="soft">
                    <tspan className="strong">{format.share(row.mean)}</tspan> {sourceOf(row).slice(0, 34)}
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
