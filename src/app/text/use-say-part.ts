import { useTranslation } from 'react-i18next'
import type { lineage } from './en/lineage.ts'

type Part = keyof typeof lineage.links.as

/** What a plant came in as: a part of the trade in the language spoken, what was bought in the nursery's own words. */
export function useSayPart(): (as: string) => string {
  const { t, i18n } = useTranslation()
  return as => (i18n.exists(`lineage.links.as.${as}`) ? t(`lineage.links.as.${as as Part}`) : as)
}
