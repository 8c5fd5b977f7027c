import type { Body, Entry } from '../record/index.ts'
import { dayNumber, type SeededRandom } from '../science/index.ts'
import { EntryId, type PersonId } from '../trade/index.ts'

/** Writes entries one after the other, with ids that the seed alone decides. */
export interface Teller {
  /** Says it, unless the day has not come yet. */
  tell(on: string, by: PersonId | null, body: Body): EntryId | null
  entries(): Entry[]
}

const DAY_MS = 86_400_000
const WORK_BEGINS_MS = 6 * 3_600_000

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, '0')

export const createTeller = (random: SeededRandom, today: string): Teller => {
  const said: Entry[] = []
  const perDay = new Map<string, number>()
  const bits = (count: number): number => Math.floor(random.uniform() * 2 ** count)

  const newId = (on: string): EntryId => {
    const nth = perDay.get(on) ?? 0
    perDay.set(on, nth + 1)
    const time = hex(dayNumber(on) * DAY_MS + WORK_BEGINS_MS + nth * 1_000, 12)
    const text = `${time.slice(0, 8)}-${time.slice(8)}-7${hex(bits(12), 3)}-${hex(0x8000 + bits(14), 4)}-${hex(bits(48), 12)}`
    return EntryId.parse(text)
  }

  return {
    tell: (on, by, body) => {
      if (on > today) return null
      const id = newId(on)
      said.push({ id, on, at: null, by, device: 'office', body })
      return id
    },
    entries: () =>
      [...said].sort((a, b) => (a.on === b.on ? a.id.localeCompare(b.id) : a.on.localeCompare(b.on))),
  }
}
