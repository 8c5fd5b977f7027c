import { useQuery } from '@tanstack/react-query'
import { createContext, type ReactNode, useContext, useMemo } from 'react'
import { I18nProvider } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { createFormat, type Format } from './format.ts'
import { localeFor } from './reader-locale.ts'
import { useTerm } from './use-term.ts'

const FormatContext = createContext<Format | null>(null)

/** Formats for this reader, made once: the language spoken, the browser's region, the nursery's units. */
export function FormatProvider({ children }: { readonly children: ReactNode }) {
  const { data } = useQuery(look.nursery())
  const units = data?.settings.units ?? 'metric'
  const locale = localeFor(useTranslation().i18n.language)
  const term = useTerm()
  return (
    <I18nProvider locale={locale}>
      <FormatContext value={useMemo(() => createFormat(locale, units, term), [locale, units, term])}>
        {children}
      </FormatContext>
    </I18nProvider>
  )
}

export const useFormat = (): Format => {
  const format = useContext(FormatContext)
  if (format === null) throw new Error('useFormat: no FormatProvider stands above')
  return format
}
