import type { Species } from '../trade/facts/index.ts'
import { type Answer, WISHES, type WishId } from './answer.ts'
import { treeFigures } from './assumptions/tree-figures.ts'
import type { AssumptionKey, Offer, Question } from './question.ts'
import { whichTree } from './which-tree.ts'

/** An input that may turn the answer: an assumption, or something the buyer said. */
export type TurningInput =
  | AssumptionKey
  | 'coldestNight'
  | 'heightMetres above sea'
  | 'yearsAhead'
  | 'interest'
  | 'price of the leading way'
  | 'litres'
  | 'squareMetres'

/** How far one input must move before another way serves a wish best, all else as it is. */
export interface TurningPoint {
  readonly wish: WishId
  readonly input: TurningInput
  readonly from: number
  readonly to: number
  /** The way that leads beyond; null where none does. */
  readonly way: string | null
  /** How far that is, as a share of what is thought possible for the input, 0 to 1. */
  readonly distance: number
}

interface Lever {
  readonly input: TurningInput
  readonly from: number
  readonly least: number
  readonly most: number
  /** Goes in whole steps. */
  readonly whole?: true
  readonly with: (value: number) => Question
}

/** Fewer futures than an answer has: a turning point is given to a tenth or so. */
const FUTURES = 60
/** How far out to look at first, as shares of the way to the end; then halved in between. */
const LOOKS = [0.2, 0.5, 1]
const HALVINGS = 6

const years: readonly AssumptionKey[] = ['yearsToFruitSeedling', 'yearsToFruitClonal', 'yearsFirstToFull']
const amounts: readonly AssumptionKey[] = [
  'fullCropKgPerSquareMetre',
  'fruitWorthPerKg',
  'carePerSquareMetre',
]
const shares: readonly AssumptionKey[] = ['trueFromSeedShare', 'worthKeepingShare', 'reworkTakeShare']
const temperatures: readonly AssumptionKey[] = ['minMatureCelsius']

function leversOf(
  question: Question,
  species: Species,
  answer: Answer,
  wish: WishId | null,
): readonly Lever[] {
  const figures = treeFigures(species, question.set)
  const assumed = (key: AssumptionKey, least: number, most: number): Lever => ({
    input: key,
    from: figures[key].typical,
    least,
    most,
    with: value => ({ ...question, set: { ...question.set, [key]: value } }),
  })
  const times = (key: AssumptionKey, low: number, high: number): Lever =>
    assumed(key, figures[key].typical * low, figures[key].typical * high)
  if (wish !== null) {
    const leading = answer.ways.find(({ way }) => way.id === answer.best[wish])
    return leading === undefined ? [] : [priceLever(question, leading)]
  }
  const asksShare = question.wanted === 'named' ? 'trueFromSeedShare' : 'worthKeepingShare'
  return [
    ...years.map(key => times(key, 0.4, 2.5)),
    ...amounts.map(key => times(key, 0.2, 5)),
    ...shares
      .filter(key => key === asksShare || (key === 'reworkTakeShare' && question.wouldRework))
      .map(key => assumed(key, 0, 1)),
    ...temperatures.map(key => assumed(key, figures[key].typical - 8, figures[key].typical + 8)),
    ...saidLevers(question),
  ]
}

function priceLever(question: Question, leading: Answer['ways'][number]): Lever {
  const form = leading.way.form === 'reworked' ? 'seedling' : leading.way.form
  const offered: Offer = leading.way.offer ?? {
    form,
    rootstock: leading.way.rootstock?.id ?? null,
    label: leading.way.id,
    price: leading.price,
    waitYears: 0,
    chance: 1,
  }
  return {
    input: 'price of the leading way',
    from: leading.price,
    least: leading.price * 0.2,
    most: leading.price * 5,
    with: price => ({
      ...question,
      offers: [...question.offers.filter(offer => offer !== offered), { ...offered, price }],
    }),
  }
}

function saidLevers(question: Question): readonly Lever[] {
  const { climate, amount, ground } = question
  const out: Lever[] = [
    {
      input: 'yearsAhead',
      from: question.yearsAhead,
      least: 3,
      most: 40,
      whole: true,
      with: yearsAhead => ({ ...question, yearsAhead }),
    },
    {
      input: 'interest',
      from: question.interest,
      least: 0,
      most: 0.25,
      with: interest => ({ ...question, interest }),
    },
  ]
  if (climate.kind === 'normals')
    out.push({
      input: 'coldestNight',
      from: climate.coldestNightCelsius,
      least: climate.coldestNightCelsius - 10,
      most: climate.coldestNightCelsius + 10,
      with: value => ({
        ...question,
        climate: {
          ...climate,
          coldestNightCelsius: value,
          coldestInTenYearsCelsius:
            climate.coldestInTenYearsCelsius === null
              ? null
              : climate.coldestInTenYearsCelsius + value - climate.coldestNightCelsius,
        },
      }),
    })
  if (climate.kind === 'place')
    out.push({
      input: 'heightMetres above sea',
      from: climate.heightMetres,
      least: Math.max(-400, climate.heightMetres - 1000),
      most: Math.min(4500, climate.heightMetres + 1500),
      with: heightMetres => ({ ...question, climate: { ...climate, heightMetres } }),
    })
  if (ground.kind === 'container')
    out.push({
      input: 'litres',
      from: ground.litres,
      least: ground.litres * 0.2,
      most: Math.min(2000, ground.litres * 5),
      with: litres => ({ ...question, ground: { ...ground, litres } }),
    })
  if (amount.kind === 'area')
    out.push({
      input: 'squareMetres',
      from: amount.squareMetres,
      least: Math.max(1, amount.squareMetres * 0.1),
      most: amount.squareMetres * 10,
      with: squareMetres => ({ ...question, amount: { ...amount, squareMetres } }),
    })
  return out
}

/** A turning point found, or undefined after each step on the way: a screen may breathe between any two. */
export type TurningStep = TurningPoint | undefined

/** Turning points, one step at a time: for each wish the nearest found so far, each nearer than the one before. */
export function* turningPoints(question: Question, species: Species, answer: Answer): Generator<TurningStep> {
  const asked = (changed: Question) => whichTree(changed, species, FUTURES).best
  const base = asked(question)
  yield
  // Where fewer futures give another leader, it is too close to say what would turn it.
  const wishes = WISHES.filter(wish => base[wish] !== null && base[wish] === answer.best[wish])
  const nearest = new Map<WishId, number>()
  for (const lever of leversOf(question, species, answer, null))
    yield* turnsOf(
      lever,
      wishes.filter(wish => matters(lever, wish)),
      base,
      asked,
      nearest,
    )
  for (const wish of wishes.filter(one => one === 'money' || one === 'cheapest'))
    for (const lever of leversOf(question, species, answer, wish))
      yield* turnsOf(lever, [wish], base, asked, nearest)
}

/** How long a tree lives is not a matter of how far one looks, nor of what money earns. */
const matters = ({ input }: Lever, wish: WishId): boolean =>
  wish !== 'sure to live' || (input !== 'yearsAhead' && input !== 'interest')

function* turnsOf(
  lever: Lever,
  wishes: readonly WishId[],
  base: Answer['best'],
  asked: (changed: Question) => Answer['best'],
  nearest: Map<WishId, number>,
): Generator<TurningStep> {
  const known = new Map<number, Answer['best']>()
  const place = (end: number, share: number) => {
    const value = lever.from + share * (end - lever.from)
    return lever.whole ? Math.round(value) : value
  }
  function* leader(value: number, wish: WishId): Generator<undefined, string | null> {
    let best = known.get(value)
    if (best === undefined) {
      best = asked(lever.with(value))
      known.set(value, best)
      yield
    }
    return best[wish]
  }
  for (const wish of wishes) {
    for (const end of [lever.least, lever.most]) {
      const isBeyond = end === lever.least ? end < lever.from : end > lever.from
      if (!isBeyond) continue
      let same = 0
      // What lies no nearer than a turning point already found is not looked at.
      const isNearer = () => same < (nearest.get(wish) ?? 1)
      for (const look of LOOKS) {
        if (!isNearer()) break
        if ((yield* leader(place(end, look), wish)) === base[wish]) {
          same = look
          continue
        }
        let other = look
        for (let i = 0; i < HALVINGS && isNearer(); i++) {
          const middle = (same + other) / 2
          if ((yield* leader(place(end, middle), wish)) === base[wish]) same = middle
          else other = middle
        }
        if (other < (nearest.get(wish) ?? 1.01)) {
          nearest.set(wish, other)
          const to = place(end, other)
          yield {
            wish,
            input: lever.input,
            from: lever.from,
            to,
            way: yield* leader(to, wish),
            distance: other,
          }
        }
        break
      }
    }
  }
}
