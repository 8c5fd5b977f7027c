import { useTranslation } from 'react-i18next'
import type { Slumped } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'

/** A slump in words: whose takes they are, and what says so. */
export function useSaySlump() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  return {
    of: ({ of }: Slumped): string => {
      if (of.by === 'step') return `${term(of.protocolName)}, ${term(of.stepName)}`
      return `${of.by === 'person' ? of.personName : term(of.speciesName)}, ${term(of.methodName)}`
    },
    says: ({ since, batches, entered, survived, expectedShare, oddsRatio, chance }: Slumped): string =>
      t('rates.slumps.says', {
        count: batches,
        shown: format.number(batches),
        since: format.fullDay(since),
        survived: format.number(survived),
        entered: format.number(entered),
        expected: format.share(expectedShare),
        odds: format.amount(oddsRatio),
        // The watch is never quite sure.
        chance: format.share(Math.min(chance, 0.99)),
      }),
  }
}
