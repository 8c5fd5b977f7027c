import type { EntryId } from '../../trade/index.ts'
import type { Entry } from '../entry.ts'

type Kind = Entry['body']['kind']

/** What is told as a change, where it was said before. */
const SETS: ReadonlySet<Kind> = new Set<Kind>(['bench-set/1', 'person-set/1', 'mother-set/1'])

/** Of each entry that says a thing anew, the one before it that said the same thing. */
export class SaidAnew {
  readonly #byKey = new Map<string, readonly (readonly [later: EntryId, earlier: EntryId])[]>()
  #shown: ReadonlyMap<EntryId, EntryId> | null = null

  /** @param entries of a register key, struck ones left out, in the order in which they count */
  note(key: string, entries: readonly Entry[]): void {
    const sets = entries.filter(({ body }) => SETS.has(body.kind))
    if (sets.length > 1)
      this.#byKey.set(
        key,
        sets.slice(1).map((later, i) => [later.id, sets[i]!.id]),
      )
    else if (!this.#byKey.delete(key)) return
    this.#shown = null
  }

  insteadOf(): ReadonlyMap<EntryId, EntryId> {
    this.#shown ??= new Map([...this.#byKey.values()].flat())
    return this.#shown
  }
}
