import { useMemo } from 'react'
import { type Phrase, told } from '../../trade/index.ts'
import { useFormat } from './use-format.tsx'
import { useTerm } from './use-term.ts'

/** What the office says in words and parts, in the language spoken, numbers and days as the reader writes them. */
export function useTell(): (what: Phrase) => string {
  const words = useTerm()
  const { decimal, fullDay, shown } = useFormat()
  return useMemo(() => {
    const measure = (amount: number, metricUnit: string) => {
      const { to, unit } = shown(metricUnit)
      return `${decimal(to(amount))} ${unit}`
    }
    const telling = { words, number: decimal, day: fullDay, measure }
    return (what: Phrase) => told(what, telling)
  }, [words, decimal, fullDay, shown])
}
