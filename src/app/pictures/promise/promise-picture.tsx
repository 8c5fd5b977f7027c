import { useTranslation } from 'react-i18next'
import { weekAfter } from '../../text/format.ts'
import { useWeekName } from '../../text/use-week-said.ts'
import { Picture } from '../frame/picture.tsx'
import { layOutLoad } from '../load/load-layout.ts'
import { WeekBars } from '../load/week-bars.tsx'

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
  const weekText = useWeekName()
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
        // The bars are never too much: they may reach as high as they are.
        const layout = layOutLoad({ expected: surely, badYear: middle, capacity: surely }, width)
        return (
          <WeekBars layout={layout} first={first} width={width} label={`${title}. ${says}`}>
            <path d={layout.badYear} className="load-can" />
          </WeekBars>
        )
      }}
    </Picture>
  )
}
