import { useQuery } from '@tanstack/react-query'
import { useMemo } from 'react'
import { look } from '../data/queries.ts'
import { createFormat, type Format } from './format.ts'
import { readerLocale } from './reader-locale.ts'

/** Formats for this reader: the browser's locale, the nursery's units. */
export const useFormat = (): Format => {
  const { data } = useQuery(look.nursery())
  const units = data?.settings.units ?? 'metric'
  return useMemo(() => createFormat(readerLocale(), units), [units])
}
