import type { Answer } from '../../../advice/index.ts'
import { linear, type Scale, ticks } from '../scale.ts'

export interface CropLayout {
  readonly x: Scale
  readonly y: Scale
  readonly height: number
  readonly numbers: readonly number[]
  readonly years: readonly number[]
  readonly lines: readonly {
    readonly way: string
    readonly letter: string
    /** Area within which eight futures of ten lie. */
    readonly band: string
    readonly line: string
    /** Where the letter of the way stands at the end of its line, kept clear of the others. */
    readonly endY: number
  }[]
  /** Stretches of years in which one way leads. */
  readonly leads: readonly {
    readonly way: string
    readonly letter: string
    readonly from: number
    readonly to: number
  }[]
}

const TOP = 10
const AXIS = 20
const STRIP = 26
const LETTER_ROOM = 26
const LETTER_APART = 17
/** So little fruit is none. */
const NOTHING = 0.05

export const letterOf = (place: number): string => String.fromCharCode(65 + place)

/**
 * Cumulative crop of the wanted fruit by year: a line of what is expected and a band for each way.
 * @param to kilograms in the reader's unit, which the numbers at the side are in
 */
export function layOutCrop(
  answer: Answer,
  left: number,
  width: number,
  to: (kilograms: number) => number,
): CropLayout {
  const height = Math.max(240, Math.min(360, width * 0.46)) + STRIP
  const bottom = height - STRIP - AXIS
  const highest = Math.max(0, ...answer.ways.map(({ cropSoFar }) => to(cropSoFar.high.at(-1)!)))
  // Where nothing is borne the axis still has numbers that differ.
  const most = highest > NOTHING ? highest : 1
  const numbers = ticks(most, 4)
  const x = linear(0, answer.years, left, width - LETTER_ROOM)
  const y = linear(0, numbers.at(-1)!, bottom, TOP)
  const ends = answer.ways
    .map(({ way, cropSoFar }) => ({ way: way.id, at: y(to(cropSoFar.mean.at(-1)!)) }))
    .sort((a, b) => a.at - b.at)
  // From the top down each letter keeps its distance; the whole is then pushed up where it ran over the bottom.
  let last = Number.NEGATIVE_INFINITY
  const placed = ends.map(({ way, at }) => {
    last = Math.max(at, last + LETTER_APART)
    return { way, at: last }
  })
  let under = bottom + 4
  for (let i = placed.length - 1; i >= 0; i--) {
    placed[i]!.at = Math.min(placed[i]!.at, under)
    under = placed[i]!.at - LETTER_APART
  }
  const letters = new Map(answer.ways.map(({ way }, place) => [way.id, letterOf(place)]))
  const point = (value: number, year: number) => `${x(year).toFixed(1)} ${y(to(value)).toFixed(1)}`
  return {
    x,
    y,
    height,
    numbers,
    years: ticks(answer.years, Math.max(3, Math.min(8, Math.floor(width / 90)))).filter(
      year => year <= answer.years && Number.isInteger(year),
    ),
    lines: answer.ways.map(({ way, cropSoFar }) => ({
      way: way.id,
      letter: letters.get(way.id)!,
      band: `M${cropSoFar.high.map(point).join('L')}L${cropSoFar.low
        .map((value, year) => point(value, year))
        .reverse()
        .join('L')}Z`,
      line: `M${cropSoFar.mean.map(point).join('L')}`,
      endY: placed.find(one => one.way === way.id)!.at,
    })),
    leads: answer.leaders.map(({ fromYear, way }, place) => ({
      way,
      letter: letters.get(way)!,
      from: fromYear - (place === 0 ? 1 : 0.5),
      to: place + 1 < answer.leaders.length ? answer.leaders[place + 1]!.fromYear - 0.5 : answer.years,
    })),
  }
}

/** A line of the legend, high enough for a finger. */
export const LEGEND_LINE = 34
const LEGEND_COLUMN = 300

/** Where the names of the ways stand below the drawing: in as many columns as fit, column by column. */
export const layOutLegend = (count: number, width: number, top: number) => {
  const columns = Math.max(1, Math.min(count, Math.floor(width / LEGEND_COLUMN)))
  const rows = Math.ceil(count / columns)
  const room = width / columns
  return {
    places: Array.from({ length: count }, (_, place) => ({
      x: Math.floor(place / rows) * room,
      y: top + (place % rows) * LEGEND_LINE,
      room: room - 8,
    })),
    height: top + rows * LEGEND_LINE,
  }
}
