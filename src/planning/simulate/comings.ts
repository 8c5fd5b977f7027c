import type { Room } from './room-to-keep.ts'

/** In which weeks how many plants of a living batch are ready, season by season: the same whatever is planned. */
export interface Comings {
  /** Calls with each week of a season in turn; false where the season is not known. */
  each(season: number, tell: (week: number, plants: number) => void): boolean
  /** From here on what is noted belongs to this season. */
  turnTo(season: number): void
  note(week: number, plants: number): void
}

const FIRST_SEASONS = 256
const FIRST_WEEKS = 4096
const BYTES_OF_SEASON = 8
const BYTES_OF_WEEK = 6

/** Nothing is known; what is noted is kept as long as there is room. */
export function noComings(room: Room): Comings {
  /** By season, where its weeks begin and end; both 0 where it is not known. The first place stays empty. */
  let from = new Int32Array(0)
  let to = new Int32Array(0)
  let weeks = new Uint16Array(0)
  let plants = new Int32Array(0)
  let used = 1
  let at = -1
  const hasRoom = (bytes: number) => {
    if (bytes > room.left) return false
    room.left -= bytes
    return true
  }
  return {
    each(season, tell) {
      if (season >= from.length || from[season] === 0) return false
      for (let i = from[season]!; i < to[season]!; i++) tell(weeks[i]!, plants[i]!)
      return true
    },
    turnTo(season) {
      at = -1
      if (season >= from.length) {
        const length = Math.max(FIRST_SEASONS, 2 * from.length, season + 1)
        if (!hasRoom(BYTES_OF_SEASON * (length - from.length))) return
        from = grown(from, new Int32Array(length))
        to = grown(to, new Int32Array(length))
      }
      at = season
      from[at] = used
      to[at] = used
    },
    note(week, number) {
      if (at < 0) return
      if (used >= weeks.length) {
        const length = Math.max(FIRST_WEEKS, 2 * weeks.length)
        if (!hasRoom(BYTES_OF_WEEK * (length - weeks.length))) {
          from[at] = 0
          at = -1
          return
        }
        weeks = grown(weeks, new Uint16Array(length))
        plants = grown(plants, new Int32Array(length))
      }
      weeks[used] = week
      plants[used++] = number
      to[at] = used
    },
  }
}

function grown<A extends Int32Array | Uint16Array>(from: A, into: A): A {
  into.set(from)
  return into
}
