import { useTranslation } from 'react-i18next'
import type { BandPoint, BatchView } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import './band.css'
import { Picture } from '../frame/picture.tsx'
import { layOutBand, rangeOn, standingOf } from './band-layout.ts'

/** A batch's counts against the band in which nine of ten such batches run. */
export function BandPicture({
  title,
  begun,
  counts,
  expected,
  lost,
  today,
}: {
  readonly title: string
  /** Plants begun with, on day 0. */
  readonly begun: number
  readonly counts: BatchView['counts']
  /** Empty as long as it is not known. */
  readonly expected: readonly BandPoint[]
  /** Lost over all steps up to now: what is known of today besides the counts. */
  readonly lost: number
  /** Days since the start. */
  readonly today: number
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const counted = [{ day: 0, alive: begun }, ...counts.map(({ day, alive }) => ({ day, alive }))]
  const alive = begun - lost
  const seen = today > counted.at(-1)!.day && alive >= 0 ? [...counted, { day: today, alive }] : counted
  const last = seen.at(-1)!
  const standing = seen.length === 1 ? null : standingOf(expected, last.day, last.alive)

  const spoken = seen
    .map(({ day, alive: number }, index) => {
      const range = index === 0 ? null : rangeOn(expected, day)
      const of = { day: format.number(day), number: format.number(number) }
      return range === null
        ? t('pictures.band.counted', of)
        : t('pictures.band.countedOf', { ...of, range: format.range(range.low, range.high) })
    })
    .join('; ')
  return (
    <Picture
      title={title}
      {...(standing === null
        ? {}
        : { says: t(`pictures.band.${standing}`, { number: format.number(last.alive) }) })}
      numbers={() => ({
        columns: [
          t('pictures.band.day'),
          t('pictures.band.low'),
          t('pictures.band.middle'),
          t('pictures.band.high'),
          t('pictures.band.alive'),
        ],
        rows: [
          ...expected.map(({ day, low, middle, high }) => ({
            day,
            cells: [low, middle, high].map(Math.round),
            alive: '' as number | '',
          })),
          ...seen.map(({ day, alive }) => ({ day, cells: ['', '', ''] as (number | string)[], alive })),
        ]
          .sort((a, b) => a.day - b.day)
          .map(({ day, cells, alive }) => [day, ...cells, alive]),
      })}
    >
      {width => {
        const { x, y, height, band, middle, numbers, days } = layOutBand(expected, seen, width)
        return (
          <svg
            className="band"
            width={width}
            height={height}
            role="img"
            aria-label={`${t('pictures.band.aria')}. ${spoken}`}
          >
            {numbers.map(number => (
              <g key={number}>
                <path d={`M${x(0)} ${y(number)}H${width - 14}`} className="grid" />
                <text x={x(0) - 8} y={y(number) + 4} textAnchor="end" className="soft">
                  {format.number(number)}
                </text>
              </g>
            ))}
            {days.map(day => (
              <text
                key={day}
                x={x(day)}
                y={height - 6}
                textAnchor={day === 0 ? 'start' : 'middle'}
                className="soft"
              >
                {t('common.day', { day: format.number(day) })}
              </text>
            ))}
            {band !== '' && <path d={band} className="band-area" />}
            {middle !== '' && <path d={middle} className="band-middle" />}
            {today > 0 && today < x.to && (
              <g>
                <path d={`M${x(today)} 4V${y(0)}`} className="band-today" />
                <text x={x(today) + 5} y={12} className="soft">
                  {t('pictures.band.today')}
                </text>
              </g>
            )}
            <path
              d={`M${seen.map(({ day, alive }) => `${x(day)} ${y(alive)}`).join('L')}`}
              className="band-line"
            />
            {seen.map(({ day, alive }, index) => {
              const where = index === 0 ? null : standingOf(expected, day, alive)
              return where === 'below' ? (
                <path
                  key={`${day} ${alive}`}
                  d={`M${x(day) - 6} ${y(alive) - 4}h12l-6 10z`}
                  className="band-below"
                />
              ) : (
                <circle key={`${day} ${alive}`} cx={x(day)} cy={y(alive)} r={5} className="band-count" />
              )
            })}
            {seen.length > 1 && (
              <text
                x={x(last.day) > width - 60 ? x(last.day) - 12 : x(last.day) + 11}
                y={y(last.alive) + 5}
                textAnchor={x(last.day) > width - 60 ? 'end' : 'start'}
                className={standing === 'below' ? 'warn' : 'strong'}
              >
                {format.number(last.alive)}
              </text>
            )}
          </svg>
        )
      }}
    </Picture>
  )
}
