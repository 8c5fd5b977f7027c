import { foldName } from '../../trade/index.ts'

const kept = new Map<string, string>()
const KEPT_AT_MOST = 50_000

/** `foldName`, remembered: a list names the same few hundred things over and over. */
export const folded = (name: string): string => {
  const known = kept.get(name)
  if (known !== undefined) return known
  if (kept.size >= KEPT_AT_MOST) kept.clear()
  const made = foldName(name)
  kept.set(name, made)
  return made
}
