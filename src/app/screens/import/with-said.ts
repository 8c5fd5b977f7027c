import type { Mapping, SheetSaid } from '../../../api/index.ts'

/** The mapping with something more said of one sheet; what was said of its columns and questions before stays. */
export const withSaid = (mapping: Mapping, sheet: string, said: SheetSaid): Mapping => {
  const before = mapping[sheet] ?? {}
  return {
    ...mapping,
    [sheet]: {
      ...before,
      ...said,
      ...(said.columns || before.columns ? { columns: { ...before.columns, ...said.columns } } : {}),
      ...(said.answers || before.answers ? { answers: { ...before.answers, ...said.answers } } : {}),
    },
  }
}
