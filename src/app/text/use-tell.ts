import { useMemo } from 'react'
import { type Phrase, told } from '../../trade/index.ts'
import { useFormat } from './use-format.tsx'
import { useTerm } from './use-term.ts'

/** Of measures and money; what is counted has none. */
const DECIMALS = 2

/** What the office says in words and parts, in the language spoken, numbers and days as the reader writes them. */
export function useTell(): (what: Phrase) => string {
  const words = useTerm()
  const { locale, fullDay } = useFormat()
  return useMemo(() => {
    const number = new Intl.NumberFormat(locale, { maximumFractionDigits: DECIMALS })
    const telling = { words, number: (value: number) => number.format(value), day: fullDay }
    return (what: Phrase) => told(what, telling)
  }, [words, locale, fullDay])
}
