import type { Entry } from '../entry.ts'
import { compareEntries } from '../entry-order.ts'

const nounOf = (key: string): string => key.slice(0, key.indexOf(' '))

/**
 * The places of things in their lists: in the order in which they were first spoken of, whatever was said of them later,
 * and in whatever order it arrived.
 */
export class InPlace {
  /** Of each thing, by its register key, the entry that speaks of it first. */
  readonly #firsts = new Map<string, Entry>()
  /** As they were shown last, until one of their things is said anew. */
  readonly #shown = new Map<string, ReadonlyMap<string, unknown>>()

  constructor(nouns: readonly string[]) {
    this.#nouns = new Set(nouns)
  }
  readonly #nouns: ReadonlySet<string>

  /** @param entries of the thing, struck ones left out, in the order in which they count */
  note(key: string, [first]: readonly Entry[]): void {
    const noun = nounOf(key)
    if (!this.#nouns.has(noun)) return
    if (first) this.#firsts.set(key, first)
    else this.#firsts.delete(key)
    this.#shown.delete(noun)
  }

  list<K extends string, T>(noun: string, things: ReadonlyMap<K, T>): ReadonlyMap<K, T> {
    const before = this.#shown.get(noun) as ReadonlyMap<K, T> | undefined
    if (before) return before
    const firstOf = ([id]: readonly [K, T]) => this.#firsts.get(`${noun} ${id}`)!
    const list = new Map([...things].sort((a, b) => compareEntries(firstOf(a), firstOf(b))))
    this.#shown.set(noun, list)
    return list
  }
}
