import { useTranslation } from 'react-i18next'
import { weekAfter } from '../../text/format.ts'
import { useWeekName } from '../../text/use-week-said.ts'
import { Picture } from '../frame/picture.tsx'
import { STRIP_LEFT, STRIP_NARROW } from '../season-strip/strip-layout.ts'
import { type Handle, LineHandle } from './line-handle.tsx'
import { type LoadSeries, layOutLoad } from './load-layout.ts'
import { WeekBars } from './week-bars.tsx'

/** Room at the end of the line for the grip that moves it. */
const GRIP = 20

/** What a place, a skill or a mother tree carries by week, against what it can. */
export function LoadPicture({
  title,
  says,
  unit,
  series,
  first,
  handle,
}: {
  readonly title: string
  readonly says: string
  readonly unit: string
  readonly series: LoadSeries
  readonly first: string
  /** Moves the line of what it can carry. */
  readonly handle?: Handle
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
        columns: [
          t('pictures.season.week'),
          `${t('pictures.season.expected')} (${unit})`,
          t('pictures.season.badYear'),
          t('pictures.season.capacity'),
          ...(series.tried ? [t('pictures.season.tried')] : []),
        ],
        rows: series.expected.map((value, index) => [
          weekText(weekAfter(first, index)),
          Math.round(value * 10) / 10,
          Math.round((series.badYear[index] ?? 0) * 10) / 10,
          Math.round((series.capacity[index] ?? 0) * 10) / 10,
          ...(series.tried ? [Math.round((series.tried[index] ?? 0) * 10) / 10] : []),
        ]),
      })}
    >
      {width => {
        // Where there is room its weeks stand right under those of the strip, and its grip beside them.
        const isUnderStrip = width >= STRIP_NARROW
        const layout = isUnderStrip
          ? layOutLoad(series, width, STRIP_LEFT)
          : layOutLoad(series, handle === undefined ? width : width - GRIP)
        return (
          <WeekBars
            layout={layout}
            first={first}
            width={width}
            label={`${t('pictures.season.loadAria', { name: title })}. ${says}`}
            role={handle === undefined ? 'img' : 'group'}
          >
            <path d={layout.badYear} className="load-bad" />
            <path d={layout.capacity} className="load-can" />
            {layout.tried !== null && <path d={layout.tried} className="load-tried" />}
            {handle !== undefined && (
              <LineHandle
                line={layout.tried ?? layout.capacity}
                x={isUnderStrip ? width + GRIP / 2 : width - GRIP / 2}
                y={layout.end}
                perPixel={layout.perPixel}
                handle={handle}
              />
            )}
          </WeekBars>
        )
      }}
    </Picture>
  )
}
