import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import { Leaf } from '../parts/leaf.tsx'
import { Picture } from '../pictures/frame/picture.tsx'
import { Hatch } from '../pictures/hatch.tsx'
import { linear, ticks } from '../pictures/scale.ts'
import { monthMarks, monthsNamed } from '../pictures/season-strip/strip-layout.ts'
import { useFormat } from '../text/use-format.tsx'
import type { RulerWeek } from './ruler-weeks.ts'

const LEFT = 48
const HEIGHT = 240
const BOTTOM = 24

/** The ruler of the coming year as a picture of its own: planned hours by week, as a table too, and saved. */
export function YearAhead({
  weeks,
  onClose,
}: {
  readonly weeks: readonly RulerWeek[]
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const hatch = useId()
  const first = weeks[0]!.week
  const numbers = ticks(Math.max(1, ...weeks.map(({ hours }) => hours)), 4)
  return (
    <Leaf title={t('shell.ruler.label')} isOpen onClose={onClose}>
      <Picture
        title={t('shell.ruler.title')}
        says={t('shell.ruler.says')}
        level={3}
        bare
        numbers={() => ({
          columns: [t('pictures.season.week'), t('shell.ruler.hours'), t('shell.ruler.much')],
          rows: weeks.map(({ week, hours, isOver }) => [
            format.weekByNumber
              ? `${t('common.week', { week: format.week(week) })}, ${format.weekDays(week)}`
              : format.weekDays(week),
            Math.round(hours * 10) / 10,
            isOver ? t('shell.ruler.isMuch') : '',
          ]),
        })}
      >
        {width => {
          const x = linear(0, weeks.length, LEFT, width)
          const y = linear(0, numbers.at(-1)!, HEIGHT - BOTTOM, 8)
          const months = monthMarks(first, weeks.length)
          const skip = monthsNamed(months.length, width - LEFT)
          return (
            <svg width={width} height={HEIGHT} role="img" aria-label={t('shell.ruler.says')}>
              <defs>
                <Hatch id={hatch} />
              </defs>
              {numbers.map(number => (
                <g key={number}>
                  <path d={`M${LEFT} ${y(number)}H${width}`} className="grid" />
                  <text x={LEFT - 6} y={y(number) + 4} textAnchor="end" className="soft">
                    {format.number(number)}
                  </text>
                </g>
              ))}
              {weeks.map(({ week, hours, isOver }, index) => (
                <rect
                  key={week}
                  x={x(index) + 1}
                  y={y(hours)}
                  width={Math.max(1, x(1) - x(0) - 2)}
                  height={y(0) - y(hours)}
                  className={isOver ? 'too-much' : 'ruler-bar'}
                  {...(isOver && { fill: `url(#${hatch})` })}
                >
                  <title>{`${format.weekDays(week)}: ${format.hours(60 * hours)}`}</title>
                </rect>
              ))}
              {months.map(({ index, month, year }, place) =>
                place % skip === 0 ? (
                  <text key={`${year} ${month}`} x={x(index)} y={HEIGHT - 6} className="soft">
                    {month === 0 ? year : format.month(month)}
                  </text>
                ) : null,
              )}
            </svg>
          )
        }}
      </Picture>
    </Leaf>
  )
}
