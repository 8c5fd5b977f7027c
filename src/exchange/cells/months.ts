import { monthByName } from '../words/month-names.ts'

const ALL_YEAR =
  /^(all|whole) (the )?year( round)?$|^ganzjahrig$|^ganzjährig$|^toute l['’]annee$|^toute l['’]année$|^todo el ano$|^todo el año$/iu
const to = /\s*(?:–|—|-|\bto\b|\bbis\b|\bà\b|\ba\b|\bal\b|\btot\b|\bhasta\b)\s*/iu

const monthOf = (word: string): number | undefined => {
  const number = /^\d{1,2}$/u.test(word) ? Number(word) : undefined
  return number === undefined ? monthByName(word) : number >= 1 && number <= 12 ? number : undefined
}

/**
 * Months by name or number, one by one or from one to another, over the turn of the year too: "Nov to Feb", "5, 6, 7".
 * None of them, for all the year; null where it says no months.
 */
export function monthsIn(text: string): number[] | null {
  if (ALL_YEAR.test(text.trim())) return []
  const found: number[] = []
  for (const part of text.split(/\s*(?:[,;/+&]|\band\b|\bund\b|\bet\b|\by\b|\be\b|\ben\b)\s*/iu)) {
    const [from, until, more] = part.trim().replace(/\.$/u, '').split(to).map(monthOf)
    const isOne = !to.test(part.trim())
    if (from === undefined || more !== undefined || (!isOne && until === undefined)) return null
    const last = until ?? from
    for (let month = from; ; month = (month % 12) + 1) {
      if (!found.includes(month)) found.push(month)
      if (month === last) break
    }
  }
  return found
}
