/**
 * At most `most` of the rows: of each group the newest, as many of each as fit. A group with fewer rows keeps all of
 * them, so that what is rarely made is not crowded out by what is made every week. The order of the rows is kept.
 */
export function newestOfEach<T extends { readonly year: number; readonly month: number }>(
  rows: readonly T[],
  groupOf: (row: T) => string,
  most: number,
): readonly T[] {
  if (rows.length <= most) return rows
  const newestFirst = rows
    .map((row, at) => ({ row, at }))
    .sort((a, b) => b.row.year - a.row.year || b.row.month - a.row.month || b.at - a.at)
  const sizes = new Map<string, number>()
  const ranked = newestFirst.map(({ row, at }) => {
    const group = groupOf(row)
    const rank = (sizes.get(group) ?? 0) + 1
    sizes.set(group, rank)
    return { row, at, rank }
  })
  const depth = deepestThatFits([...sizes.values()], most)
  return ranked
    .filter(({ rank }) => rank <= depth)
    .sort((a, b) => a.at - b.at)
    .map(({ row }) => row)
}

/** The largest number of rows of each group that, over all groups, come to no more than `most`. */
function deepestThatFits(sizes: readonly number[], most: number): number {
  const rising = [...sizes].sort((a, b) => a - b)
  let taken = 0
  for (const [i, size] of rising.entries()) {
    const groupsLeft = rising.length - i
    if (taken + size * groupsLeft > most) return Math.floor((most - taken) / groupsLeft)
    taken += size
  }
  return rising.at(-1) ?? 0
}
