import type { Supply } from '../../record/index.ts'
import { foldName, Material } from '../../trade/index.ts'
import { monthsIn } from './months.ts'

/** A supply of which the months, or how much in a week, may be left open. */
export interface SupplySaid {
  readonly material: Material
  readonly perYear: number
  readonly perWeek: number | null
  /** None: all the year; null: not said. */
  readonly months: readonly number[] | null
}

/** One mark before three digits parts thousands: nobody counts thousandths of a cutting. */
const NUMBER = String.raw`[1-9]\d{0,2}(?:[.,'’ ]\d{3})+|\d+(?:[.,]\d+)?`
const isInThousands = /^[1-9]\d{0,2}(?:[.,'’ ]\d{3})+$/u
const amount = (text: string): number =>
  Number(isInThousands.test(text) ? text.replace(/\D/gu, '') : text.replace(',', '.'))
/** As `amount` reads it again. */
const written = (number: number): string => (isInThousands.test(`${number}`) ? `${number}0` : `${number}`)

/** As what a mother tree gives is written out: `300 cuttings in months 5, 6, 7, at most 30 a week; 60 seed all year`. */
export const suppliesText = (gives: readonly Supply[]): string =>
  gives
    .map(
      ({ material, perYear, perWeek, months }) =>
        `${written(perYear)} ${material} ${months.length === 0 ? 'all year' : `in months ${months.join(', ')}`}${
          perWeek === null ? '' : `, at most ${written(perWeek)} a week`
        }`,
    )
    .join('; ')

const aWeek = new RegExp(
  String.raw`,?\s*(?:at most|up to|max\.?|höchstens|au plus|como mucho)?\s*(${NUMBER})\s*(?:a|per|each|pro|par|por|\/)\s*(?:week|wk|woche|semaine|semana|settimana)`,
  'iu',
)
const aYear = /\s*(?:a|per|each|pro|par|por|\/)\s*(?:year|yr|jahr|an|año|anno)\b/iu
const numberFirst = new RegExp(String.raw`^(${NUMBER})\s+(.+)$`, 'u')
const numberLast = new RegExp(String.raw`^(.+?)[\s:]+(${NUMBER})$`, 'u')

/** What one mother tree gives, said in one cell, parted by semicolons; what cannot be read is named instead. */
export function suppliesIn(
  text: string,
  materialCalled: (words: string) => Material | undefined,
): { readonly supplies: readonly SupplySaid[] } | { readonly wrong: string } {
  const supplies: SupplySaid[] = []
  for (const part of text.split(/\s*;\s*/u).filter(Boolean)) {
    const week = aWeek.exec(part)
    const rest = part.replace(aWeek, '').replace(aYear, '')
    const [, what = rest, when] =
      /^(.*?),?\s+(?:(?:in|im|en|de)\s+(?:months?\s+)?|(?=all year))(.+)$/iu.exec(rest) ?? []
    const [, first, last] = numberFirst.exec(what.trim()) ?? []
    const [, word, number] = first === undefined ? (numberLast.exec(what.trim()) ?? []) : [null, last, first]
    const material = word === undefined || word === null ? undefined : materialCalled(word)
    const months = when === undefined ? null : monthsIn(when)
    if (material === undefined || number === undefined || (when !== undefined && months === null))
      return { wrong: part }
    supplies.push({ material, perYear: amount(number), perWeek: week ? amount(week[1]!) : null, months })
  }
  return { supplies }
}

/** @param words headers by which each material is called, parted by commas */
export const materialsCalled = (
  words: readonly { readonly id: string; readonly words: string }[],
): ((said: string) => Material | undefined) => {
  const byWord = new Map<string, Material>()
  for (const { id, words: called } of words) {
    const material = Material.safeParse(id)
    if (!material.success) continue
    for (const word of [id, ...called.split(', ')]) {
      byWord.set(foldName(word), material.data)
      byWord.set(foldName(word.replace(/s$/u, '')), material.data)
    }
  }
  for (const material of Material.options) byWord.set(foldName(material), material)
  return said => byWord.get(foldName(said))
}
