import { folded } from '../data/folded.ts'

export interface Findable {
  readonly id: string
  readonly kind: 'screen' | 'deed' | 'batch' | 'order' | 'mother' | 'bench' | 'fruit' | 'method' | 'protocol'
  readonly name: string
  /** Said beside the name; searched too. */
  readonly also: string
}

const MOST = 40

/** How well a thing answers: the name's beginning before a word's beginning before anywhere; null when it does not. */
const rank = ({ name, also }: Findable, words: readonly string[]): number | null => {
  const text = folded(`${name} ${also}`)
  if (!words.every(word => text.includes(word))) return null
  const first = words[0] ?? ''
  const title = folded(name)
  if (title === first) return 0
  if (title.startsWith(first)) return 1
  return text.includes(` ${first}`) ? 2 : 3
}

/** The things that are called so, best first; of equals, the order given. */
export const findAnything = (things: readonly Findable[], said: string): readonly Findable[] => {
  const words = folded(said).split(/\s+/).filter(Boolean)
  if (words.length === 0) return things.slice(0, MOST)
  return things
    .flatMap(thing => {
      const place = rank(thing, words)
      return place === null ? [] : [{ thing, place }]
    })
    .sort((a, b) => a.place - b.place)
    .slice(0, MOST)
    .map(({ thing }) => thing)
}
