import type { Offer } from '../../../advice/index.ts'
import { rootstocksOf } from '../../../advice/index.ts'
import type { BatchRow } from '../../../api/index.ts'
import type { Kind } from '../../../trade/index.ts'

/** Until what grows on can be handed over, and until what is not begun can be. Guesses, shown as such. */
const GROWING = { waitYears: 1, chance: 0.8 } as const
const NOT_BEGUN = { waitYears: 2, chance: 0.7 } as const

/** What the nursery has of a fruit, or grows: its kinds by form, with price and whether so many stand ready. */
export function nurseryOffers(
  species: string,
  trees: number,
  kinds: readonly Kind[],
  batches: readonly Pick<BatchRow, 'kind' | 'finished' | 'standing' | 'onHold'>[],
): readonly Offer[] {
  return kinds
    .filter(kind => kind.species === species && kind.form !== 'rootstock')
    .map(kind => {
      const own = batches.filter(batch => batch.kind === kind.id && !batch.onHold)
      const finished = own.reduce((sum, batch) => sum + batch.finished, 0)
      const standing = own.reduce((sum, batch) => sum + batch.standing, 0)
      const when =
        finished >= trees ? { waitYears: 0, chance: 1 } : standing + finished >= trees ? GROWING : NOT_BEGUN
      return {
        form: kind.form,
        rootstock: stockOf(species, kind, kinds),
        label: kind.name,
        price: kind.price,
        ...when,
      }
    })
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
