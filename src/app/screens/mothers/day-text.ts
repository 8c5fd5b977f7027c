import { isDay } from '../../../science/index.ts'

/** A day as a date field gives it, or nothing yet. */
export const isDayOrEmpty = (text: string): boolean => text === '' || isDay(text)
