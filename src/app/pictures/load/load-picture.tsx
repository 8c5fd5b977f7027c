import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import { weekAfter } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import './load.css'
import { Picture } from '../frame/picture.tsx'
import { Hatch } from '../hatch.tsx'
import { monthMarks } from '../season-strip/strip-layout.ts'
import { type LoadSeries, layOutLoad } from './load-layout.ts'

/** What a place, a skill or a mother tree carries by week, against what it can. */
export function LoadPicture({
  title,
  says,
  unit,
  series,
  first,
}: {
  readonly title: string
  readonly says: string
  readonly unit: string
  readonly series: LoadSeries
  readonly first: string
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const hatch = useId()
  const weekText = (week: string) =>
    format.weekByNumber ? t('common.week', { week: format.week(week) }) : format.week(week)
  return (
    <Picture
      title={title}
      says={says}
      level={3}
      bare
      numbers={() => ({
        columns: [
          t('pictures.season.week'),
          `${t('pictures.season.expected')} (${unit})`,
          t('pictures.season.badYear'),
          t('pictures.season.capacity'),
        ],
        rows: series.expected.map((value, index) => [
          weekText(weekAfter(first, index)),
          Math.round(value * 10) / 10,
          Math.round((series.badYear[index] ?? 0) * 10) / 10,
          Math.round((series.capacity[index] ?? 0) * 10) / 10,
        ]),
      })}
    >
      {width => {
        const left = 44
        const layout = layOutLoad(series, left, width)
        const months = monthMarks(first, series.expected.length)
        const skip = Math.ceil((months.length * 30) / (width - left))
        return (
          <svg
            className="load"
            width={width}
            height={layout.height}
            role="img"
            aria-label={`${t('pictures.season.loadAria', { name: title })}. ${says}`}
          >
            <defs>
              <Hatch id={hatch} />
            </defs>
            {layout.numbers.map(number => (
              <g key={number}>
                <path d={`M${left} ${layout.y(number)}H${width}`} className="grid" />
                <text x={left - 6} y={layout.y(number) + 4} textAnchor="end" className="soft">
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
            <path d={layout.badYear} className="load-bad" />
            <path d={layout.capacity} className="load-can" />
            {layout.tried !== null && <path d={layout.tried} className="load-tried" />}
            {months.map(({ index, month, year }, place) =>
              place % skip === 0 ? (
                <text key={`${year} ${month}`} x={layout.x(index)} y={layout.height - 4} className="soft">
                  {month === 0 ? year : format.month(month)}
                </text>
              ) : null,
            )}
          </svg>
        )
      }}
    </Picture>
  )
}
