import { AssumptionKey, Offer, Question } from '../../../advice/index.ts'
import { LINK_KEYS, type LinkKey, type QuestionLink } from './link-keys.ts'

/** Where nothing was said of the place yet: a mild temperate garden. */
const USUAL_PLACE = { night: -8, cold: 3, warm: 20 } as const

const number = (said: string | number | undefined): number | undefined => {
  if (said === undefined || said === '') return undefined
  const value = Number(said)
  return Number.isFinite(value) ? value : undefined
}
const wordOf = <K extends string>(
  said: string | number | undefined,
  ...allowed: readonly K[]
): K | undefined => allowed.find(one => one === said)

/** What an address asks; what is missing or makes no sense in it stands as usual. */
export function questionFromLink(link: QuestionLink, fruit: string): Question {
  const said = {
    species: String(link.fruit ?? fruit),
    wanted: wordOf(link.want, 'named', 'any'),
    cultivar: link.name === undefined ? undefined : String(link.name),
    amount:
      number(link.area) !== undefined
        ? { kind: 'area', squareMetres: number(link.area) }
        : { kind: 'trees', trees: number(link.trees) ?? 1 },
    ground:
      number(link.pot) !== undefined
        ? {
            kind: 'container',
            litres: number(link.pot),
            winter: wordOf(link.winter, 'outside', 'by a warm wall', 'moved inside'),
          }
        : {
            kind: 'ground',
            exposure: wordOf(link.exposure, 'sheltered', 'open', 'windy'),
            staked: link.stake !== 'no',
            covered: link.cover !== 'no',
          },
    climate: climateFromLink(link),
    yearsAhead: number(link.ahead),
    partner: wordOf(link.partner, 'near', 'planted too', 'none'),
    wouldRework: link.rework === 'yes',
    heightAtMostMetres: number(link.tall) ?? null,
    firstFruitWithinYears: number(link.within) ?? null,
    spendAtMost: number(link.spend) ?? null,
    interest: number(link.interest),
    set: setFromText(String(link.set ?? '')),
    offers: offersFromText(String(link.offers ?? '')),
  }
  const read = Question.safeParse(said)
  if (read.success) return read.data
  // One bad word in an address does not lose the fruit and the place.
  const kept = Question.safeParse({ species: said.species, climate: said.climate })
  return kept.success ? kept.data : Question.parse({ species: fruit, climate: climateFromLink({}) })
}

function climateFromLink(link: QuestionLink) {
  const coldestMonthCelsius = number(link.cold) ?? USUAL_PLACE.cold
  const warmestMonthCelsius = number(link.warm) ?? USUAL_PLACE.warm
  if (number(link.lat) !== undefined)
    return {
      kind: 'place',
      latitude: number(link.lat),
      heightMetres: number(link.high) ?? 0,
      sea: wordOf(link.sea, 'near', 'some way off', 'far') ?? 'some way off',
    }
  const listed = (said: string | number | undefined) =>
    String(said ?? '')
      .split(/[;\s]+/)
      .filter(part => part !== '')
      .map(part => Number(part.replace(',', '.')))
  const winters = listed(link.winters)
  const months = listed(link.months)
  const means = months.length === 12 && months.every(Number.isFinite) ? { monthMeansCelsius: months } : {}
  if (winters.length >= 5 && winters.every(Number.isFinite))
    return {
      kind: 'record',
      yearlyMinimaCelsius: winters,
      coldestMonthCelsius,
      warmestMonthCelsius,
      ...means,
    }
  return {
    kind: 'normals',
    coldestNightCelsius: number(link.night) ?? USUAL_PLACE.night,
    coldestInTenYearsCelsius: number(link.ten) ?? null,
    coldestMonthCelsius,
    warmestMonthCelsius,
    ...means,
  }
}

/** The address of a question: what is as usual is left out. Offers stand in it only where they are to be shown. */
export function linkOfQuestion(question: Question, withOffers: boolean): QuestionLink {
  const { amount, ground, climate } = question
  return given({
    fruit: question.species,
    want: question.wanted === 'any' ? 'any' : undefined,
    name: question.cultivar || undefined,
    trees: amount.kind === 'trees' && amount.trees !== 1 ? amount.trees : undefined,
    area: amount.kind === 'area' ? amount.squareMetres : undefined,
    pot: ground.kind === 'container' ? ground.litres : undefined,
    winter: ground.kind === 'container' && ground.winter !== 'outside' ? ground.winter : undefined,
    exposure: ground.kind === 'ground' && ground.exposure !== 'open' ? ground.exposure : undefined,
    stake: ground.kind === 'ground' && !ground.staked ? 'no' : undefined,
    cover: ground.kind === 'ground' && !ground.covered ? 'no' : undefined,
    ...(climate.kind === 'place'
      ? { lat: climate.latitude, high: climate.heightMetres, sea: climate.sea }
      : {
          cold: climate.coldestMonthCelsius,
          warm: climate.warmestMonthCelsius,
          months: climate.monthMeansCelsius?.join(';'),
          ...(climate.kind === 'record'
            ? { winters: climate.yearlyMinimaCelsius.join(';') }
            : {
                night: climate.coldestNightCelsius,
                ten: climate.coldestInTenYearsCelsius ?? undefined,
              }),
        }),
    ahead: question.yearsAhead !== 15 ? question.yearsAhead : undefined,
    partner: question.partner !== 'planted too' ? question.partner : undefined,
    rework: question.wouldRework ? 'yes' : undefined,
    tall: question.heightAtMostMetres ?? undefined,
    within: question.firstFruitWithinYears ?? undefined,
    spend: question.spendAtMost ?? undefined,
    interest: question.interest !== 0.05 ? question.interest : undefined,
    set: textOfSet(question.set) || undefined,
    offers: withOffers ? textOfOffers(question.offers) || undefined : undefined,
  })
}

const given = (values: { readonly [K in LinkKey]?: string | number | undefined }): QuestionLink =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined))

const textOfSet = (set: Question['set']): string =>
  Object.entries(set)
    .map(([key, value]) => `${key}:${value}`)
    .join(' ')

const setFromText = (text: string): Question['set'] =>
  Object.fromEntries(
    text
      .split(' ')
      .map(part => part.split(':'))
      .flatMap(([key, value]) => {
        const known = AssumptionKey.safeParse(key)
        return known.success && value !== undefined && Number.isFinite(Number(value))
          ? [[known.data, Number(value)]]
          : []
      }),
  )

const textOfOffers = (offers: readonly Offer[]): string =>
  offers
    .map(({ form, rootstock, label, price, waitYears, chance }) =>
      [form, rootstock ?? '', label.replaceAll(/[~|]/g, ' '), price, waitYears, chance].join('~'),
    )
    .join('|')

const offersFromText = (text: string): readonly Offer[] =>
  text
    .split('|')
    .filter(part => part !== '')
    .flatMap(part => {
      const [form, rootstock, label, price, waitYears, chance] = part.split('~')
      const read = Offer.safeParse({
        form,
        rootstock: rootstock === '' ? null : rootstock,
        label,
        price: Number(price),
        waitYears: Number(waitYears),
        chance: Number(chance),
      })
      return read.success ? [read.data] : []
    })

/** The part of an address after the question mark. */
export const searchOfLink = (link: { readonly [key: string]: string | number }): string =>
  new URLSearchParams(Object.entries(link).map(([key, value]) => [key, String(value)])).toString()

/** A link as read from the address of a page without a router. */
export const linkFromSearch = (search: string): QuestionLink => {
  const said = new URLSearchParams(search)
  return Object.fromEntries(
    LINK_KEYS.flatMap(key => {
      const value = said.get(key)
      return value === null ? [] : [[key, value]]
    }),
  )
}
