import { dayNumber, dayText, weekNumber, weekOfDay, weekStart, weekText } from '../../science/index.ts'

export const weekOfDayText = (day: string): string => weekText(weekOfDay(dayNumber(day)))

export const mondayOf = (week: string): string => dayText(weekStart(weekNumber(week)))
