import { useTranslation } from 'react-i18next'
import type { FullBench } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { mondayOf } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekSaid } from '../../text/use-week-said.ts'

/** A bench that will be too full, in one sentence: from which week, and by how much. */
export const useSayFull = () => {
  const { t } = useTranslation()
  const format = useFormat()
  const weekSaid = useWeekSaid()
  const names = useNames()
  return ({ bench, week, squareMetres, areaSquareMetres }: FullBench): string => {
    const said = weekSaid(week)
    const isThisYear = week.slice(0, 4) === names.nursery?.week.slice(0, 4)
    return t('benches.full.one', {
      bench: names.bench(bench),
      week: isThisYear ? said : `${said}, ${format.monthYear(mondayOf(week))}`,
      load: format.area(squareMetres),
      area: format.area(areaSquareMetres),
      over: format.area(squareMetres - areaSquareMetres),
    })
  }
}
