import { useQuery } from '@tanstack/react-query'
import { createContext, type ReactNode, useContext, useMemo } from 'react'
import { look } from '../data/queries.ts'
import { createFormat, type Format } from './format.ts'
import { readerLocale } from './reader-locale.ts'

const FormatContext = createContext<Format | null>(null)

/** Formats for this reader, made once: the browser's locale, the nursery's units. */
export function FormatProvider({ children }: { readonly children: ReactNode }) {
  const { data } = useQuery(look.nursery())
  const units = data?.settings.units ?? 'metric'
  return (
    <FormatContext value={useMemo(() => createFormat(readerLocale(), units), [units])}>
      {children}
    </FormatContext>
  )
}

export const useFormat = (): Format => {
  const format = useContext(FormatContext)
  if (format === null) throw new Error('useFormat: no FormatProvider stands above')
  return format
}
