import { useTranslation } from 'react-i18next'
import { weekAfter } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { Picture } from '../frame/picture.tsx'
import { layOutLoad } from '../load/load-layout.ts'
import '../load/load.css'
import { monthMarks } from '../season-strip/strip-layout.ts'

/** How many can be promised in each week: bars as surely as asked, the line in one season of two. */
export function PromisePicture({
  title,
  says,
  first,
  surely,
  middle,
  sure,
}: {
  readonly title: string
  readonly says: string
  readonly first: string
  readonly surely: readonly number[]
  readonly middle: readonly number[]
  readonly sure: string
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const weekText = (week: string) =>
    format.weekByNumber ? t('common.week', { week: format.week(week) }) : format.week(week)
  return (
    <Picture
      title={title}
      says={says}
      level={3}
      bare
      numbers={() => ({
        columns: [t('pictures.season.week'), sure, t('orders.promise.middle')],
        rows: surely.map((number, index) => [weekText(weekAfter(first, index)), number, middle[index] ?? 0]),
      })}
    >
      {width => {
        const left = 44
        // The bars are never too much: they may reach as high as they are.
        const layout = layOutLoad({ expected: surely, badYear: middle, capacity: surely }, left, width)
        const months = monthMarks(first, surely.length)
        const skip = Math.ceil((months.length * 30) / (width - left))
        return (
          <svg
            className="load"
            width={width}
            height={layout.height}
            role="img"
            aria-label={`${title}. ${says}`}
          >
            {layout.numbers.map(number => (
              <g key={number}>
                <path d={`M${left} ${layout.y(number)}H${width}`} className="grid" />
                <text x={left - 6} y={layout.y(number) + 4} textAnchor="end" className="soft">
                  {format.amount(number)}
                </text>
              </g>
            ))}
            {layout.bars.map(bar => (
              <rect
                key={bar.x}
                x={bar.x}
                y={bar.y}
                width={bar.width}
                height={bar.height}
                className="load-bar"
              />
            ))}
            <path d={layout.badYear} className="load-can" />
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
