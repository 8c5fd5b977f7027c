import type { Offer } from '../../../advice/index.ts'
import { rootstocksOf } from '../../../advice/index.ts'
import type { BatchRow, CouldBePromised } from '../../../api/index.ts'
import { knownAs, type Species } from '../../../trade/facts/index.ts'
import type { Kind } from '../../../trade/index.ts'
import { weeksBetween } from '../../text/format.ts'

/** Where no plan tells: until what grows on can be handed over, and until what is not begun can be. Guesses. */
const GROWING = { waitYears: 1, chance: 0.8 } as const
const NOT_BEGUN = { waitYears: 2, chance: 0.7 } as const

/** So many names stand in a label before it says "and more". */
const NAMES = 2

/**
 * What the nursery has of a fruit, or grows: its kinds by form and rootstock, with price and whether so many stand ready.
 * Kinds that differ only in their cultivar are one offer, at the price of the cheapest; a name that is asked for picks
 * among them.
 */
export function nurseryOffers(
  asked: { readonly species: Species; readonly trees: number; readonly cultivar: string },
  kinds: readonly Kind[],
  batches: readonly Pick<BatchRow, 'kind' | 'finished' | 'standing' | 'onHold'>[],
  /** What the plan leaves free beside all orders, where it says. */
  promises: readonly Pick<CouldBePromised, 'kind' | 'firstWeek' | 'fromPlan' | 'ifBegun'>[] = [],
): readonly Offer[] {
  const ofFruit = kinds.filter(kind => kind.species === asked.species.id && kind.form !== 'rootstock')
  const name = asked.cultivar.trim().toLowerCase()
  const named = name === '' ? [] : ofFruit.filter(kind => kind.name.toLowerCase().includes(name))
  const groups = new Map<string, Offer[]>()
  for (const kind of named.length > 0 ? named : ofFruit) {
    const offer = {
      form: kind.form,
      rootstock: stockOf(knownAs(asked.species), kind, kinds),
      label: kind.name,
      price: kind.price,
      ...(whenPromised(promises.find(one => one.kind === kind.id)) ?? whenReady(kind, asked.trees, batches)),
    }
    const key = `${offer.form}/${offer.rootstock}/${Math.ceil(offer.waitYears)}`
    groups.set(key, [...(groups.get(key) ?? []), offer])
  }
  return [...groups.values()].map(alike => {
    const cheapest = alike.reduce((best, offer) => (offer.price < best.price ? offer : best))
    const names = alike.map(({ label }) => label)
    return {
      ...cheapest,
      label: names.length > NAMES ? `${names.slice(0, NAMES).join(', ')} …` : names.join(', '),
    }
  })
}

const WEEKS_IN_YEAR = 52.18
const LONGEST_WAIT = 15

/** The earliest week by the plan, or if it were begun for this buyer. */
function whenPromised(
  promise: Pick<CouldBePromised, 'firstWeek' | 'fromPlan' | 'ifBegun'> | undefined,
): Pick<Offer, 'waitYears' | 'chance'> | undefined {
  if (promise === undefined) return undefined
  const { firstWeek, fromPlan, ifBegun } = promise
  const week = fromPlan?.week ?? ifBegun?.readyWeek
  if (week === undefined) return undefined
  const weeks = Math.max(0, weeksBetween(firstWeek, week))
  return {
    waitYears: Math.min(LONGEST_WAIT, weeks / WEEKS_IN_YEAR),
    chance: fromPlan?.chance ?? ifBegun?.chance ?? 1,
  }
}

function whenReady(
  kind: Kind,
  trees: number,
  batches: readonly Pick<BatchRow, 'kind' | 'finished' | 'standing' | 'onHold'>[],
) {
  const own = batches.filter(batch => batch.kind === kind.id && !batch.onHold)
  const finished = own.reduce((sum, batch) => sum + batch.finished, 0)
  const standing = own.reduce((sum, batch) => sum + batch.standing, 0)
  if (finished >= trees) return { waitYears: 0, chance: 1 }
  return standing + finished >= trees ? GROWING : NOT_BEGUN
}

/** Words by which nurseries say how strong a stock grows. */
const SAID: Readonly<Record<string, RegExp>> = {
  'semi-dwarfing': /semi|half/i,
  dwarfing: /dwarf/i,
  vigorous: /vigorous|standard/i,
  seedling: /seedling/i,
  quince: /quince/i,
  trifoliate: /trifoliat|citrange/i,
  'rough-lemon': /rough|volk/i,
  'clonal-pear': /pear/i,
  clonal: /clon/i,
  plum: /plum/i,
}

/** Which usual stock a kind stands on, from the names; null where they do not tell. */
function stockOf(species: string, kind: Kind, kinds: readonly Kind[]): string | null {
  const stock = kinds.find(({ id }) => id === kind.rootstock)
  const text = `${stock?.name ?? ''} ${kind.name}`
  const known = rootstocksOf(species).map(({ id }) => id)
  return Object.entries(SAID).find(([id, said]) => known.includes(id) && said.test(text))?.[0] ?? null
}
