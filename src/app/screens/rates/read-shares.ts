/** Three shares typed as per cent, rising, with a reason; null while that does not hold. */
export const readShares = (draft: {
  readonly low: string
  readonly typical: string
  readonly high: string
  readonly why: string
}): { readonly low: number; readonly typical: number; readonly high: number } | null => {
  const [low, typical, high] = [draft.low, draft.typical, draft.high].map(text =>
    text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.')) / 100,
  ) as [number, number, number]
  return 0 <= low && low <= typical && typical <= high && high <= 1 && draft.why.trim() !== ''
    ? { low, typical, high }
    : null
}
