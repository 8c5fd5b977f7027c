/** What a season's cost goes into. */
export const COST_PARTS = [
  'material',
  'labour',
  'area',
  'holding',
  'overtime',
  'extra area',
  'buying in',
  'mother trees',
  'lateness',
  'shortage',
  'substitution',
  'moving',
] as const

/** Weighed by the plan and paid by nobody. */
export const WEIGHED: readonly string[] = ['lateness', 'shortage', 'substitution', 'moving']

/** What of a cost is paid, and what is only weighed: trees short, late or of another kind. */
export function paidAndWeighed(
  cost: number,
  parts: Readonly<Record<string, number>>,
): { readonly paid: number; readonly weighed: number } {
  const weighed = WEIGHED.reduce((sum, part) => sum + (parts[part] ?? 0), 0)
  return { paid: cost - weighed, weighed }
}
