import { useTranslation } from 'react-i18next'
import { useFormat } from './use-format.tsx'

/** A week as this reader names it where there is little room: by its number, "week 12", or by its first day. */
export function useWeekName(): (week: string) => string {
  const { t } = useTranslation()
  const format = useFormat()
  return week => (format.weekByNumber ? t('common.week', { week: format.week(week) }) : format.week(week))
}

/** A week in a sentence: "week 12", or "the week of" its first day. */
export function useWeekSaid(): (week: string) => string {
  const { t } = useTranslation()
  const format = useFormat()
  return week => t(format.weekByNumber ? 'common.week' : 'common.weekOf', { week: format.week(week) })
}
