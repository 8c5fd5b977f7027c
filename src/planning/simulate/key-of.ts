/**
 * A whole number below 2^53 from a name, so that a start, a batch or a year keeps its luck from plan to plan.
 * @source Fowler, Noll & Vo, FNV-1a hash, in the public domain, from memory
 */
export function keyOf(name: string): number {
  let low = 0x811c9dc5
  let high = 0x9dc5811c
  for (let i = 0; i < name.length; i++) {
    const code = name.charCodeAt(i)
    low = Math.imul(low ^ code, 0x01000193)
    high = Math.imul(high ^ (code + i), 0x01000193)
  }
  return (high >>> 11) * 4294967296 + (low >>> 0)
}
