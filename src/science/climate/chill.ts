/**
 * Chill that a dormant bud has had, from hourly temperatures in °C, by three ways of counting, and the warmth after it.
 */

/**
 * Hours from 0 to 7.2 °C.
 * @source Weinberger 1950, Proc. American Society for Horticultural Science 56:122-128; the lower limit is common practice
 * @example isChillHour(5) // true
 */
export const isChillHour = (celsius: number): boolean => celsius >= 0 && celsius <= 7.2

/** Upper limits, inclusive, and what an hour up to them counts; warmer hours count −1. */
const UTAH: readonly (readonly [upTo: number, units: number])[] = [
  [1.4, 0],
  [2.4, 0.5],
  [9.1, 1],
  [12.4, 0.5],
  [15.9, 0],
  [18, -0.5],
]

/**
 * Chill units of one hour, −1 to 1 (Utah model).
 * @source Richardson, Seeley & Walker 1974, HortScience 9:331-332
 * @example utahUnits(5) // 1
 */
export const utahUnits = (celsius: number): number => UTAH.find(([upTo]) => celsius <= upTo)?.[1] ?? -1

/** Constants of the dynamic model; temperatures in kelvin are °C + 273, as its authors count. */
export const DYNAMIC = { e0: 4153.5, e1: 12888.8, a0: 139500, a1: 2.567e18, slope: 1.6, tf: 277, kelvin: 273 }

/**
 * Chill portions gathered by the end of each hour (dynamic model): an intermediate is made by cold and undone by warmth;
 * once there is enough of it a part is fixed for good. For mild winters the one to trust.
 * @param celsius hourly temperatures, −60 to 60
 * @returns portions so far, one number an hour; the first hour gives none
 * @source Fishman, Erez & Couvillon 1987, J. Theoretical Biology 124:473-483 and 126:309-321; Erez, Fishman,
 *   Linsley-Noakes & Allan 1990, Acta Horticulturae 276:165-174
 * @example chillPortions(Array(480).fill(6)).at(-1) // 16.62
 */
export function chillPortions(celsius: readonly number[]): Float64Array {
  const { e0, e1, a0, a1, slope, tf, kelvin } = DYNAMIC
  const portions = new Float64Array(celsius.length)
  let intermediate = 0
  for (let hour = 1; hour < celsius.length; hour++) {
    const temperature = celsius[hour - 1]! + kelvin
    const settling = (a0 / a1) * Math.exp((e1 - e0) / temperature)
    intermediate = settling - (settling - intermediate) * Math.exp(-a1 * Math.exp(-e1 / temperature))
    let fixed = 0
    if (intermediate >= 1) {
      const odds = Math.exp((slope * tf * (temperature - tf)) / temperature)
      fixed = (intermediate * odds) / (1 + odds)
      intermediate -= fixed
    }
    portions[hour] = portions[hour - 1]! + fixed
  }
  return portions
}

/** Base, best and highest temperature of growth, °C. */
const GROWTH = { base: 4, best: 25, critical: 36 }

/**
 * Growing degree hours of one hour: warmth after the chill.
 * @source Anderson, Richardson & Kesner 1986, Acta Horticulturae 184:71-78
 * @example growingDegreeHours(14.5) // 10.5
 */
export function growingDegreeHours(celsius: number): number {
  const { base, best, critical } = GROWTH
  if (celsius < base || celsius > critical) return 0
  if (celsius <= best)
    return ((best - base) / 2) * (1 - Math.cos((Math.PI * (celsius - base)) / (best - base)))
  return (best - base) * (1 - Math.sin(((Math.PI / 2) * (celsius - best)) / (critical - best)))
}
