/**
 * The cheapest way to give every row its own column (workers to tasks, scions to stocks): shortest augmenting
 * paths with prices on the columns, in a time that grows with rows² × columns.
 *
 * @param costs rows of equal length, finite; there may be more columns than rows or fewer
 * @returns for each row its column, or −1 when there are fewer columns than rows; and the sum of costs
 * @throws RangeError for an argument out of range
 * @source Jonker & Volgenant 1987, Computing 38:325-340; Kuhn 1955, Naval Research Logistics Quarterly 2:83-97
 * @example cheapestAssignment([[5, 9, 1], [10, 3, 2], [8, 7, 4]]).cost // 12
 */
export function cheapestAssignment(costs: readonly (readonly number[])[]): {
  columns: number[]
  cost: number
} {
  const rows = costs.length
  const width = costs[0]?.length ?? 0
  for (const row of costs) {
    if (row.length !== width)
      throw new RangeError(
        `cheapestAssignment: costs must have rows of equal length, got ${width} and ${row.length}`,
      )
    for (const cost of row)
      if (!Number.isFinite(cost))
        throw new RangeError(`cheapestAssignment: costs must be finite, got ${cost}`)
  }
  if (rows > width) {
    // Turned round, the shorter side chooses.
    const turned = Array.from({ length: width }, (_, column) => costs.map(row => row[column]!))
    const found = cheapestAssignment(turned)
    const columns = new Array<number>(rows).fill(-1)
    found.columns.forEach((row, column) => {
      columns[row] = column
    })
    return { columns, cost: found.cost }
  }

  const rowOf = new Int32Array(width).fill(-1)
  const rowPrice = new Float64Array(rows)
  const columnPrice = new Float64Array(width)
  const distance = new Float64Array(width)
  const before = new Int32Array(width)
  const done = new Uint8Array(width)
  for (let from = 0; from < rows; from++) {
    // Dijkstra's paths over reduced costs from the new row to the nearest free column.
    distance.fill(Number.POSITIVE_INFINITY)
    before.fill(-1)
    done.fill(0)
    let row = from
    let reached = -1
    let shortest = 0
    let last = -1
    while (reached < 0) {
      let nearest = -1
      for (let column = 0; column < width; column++) {
        if (done[column]) continue
        const through = shortest + costs[row]![column]! - rowPrice[row]! - columnPrice[column]!
        if (through < distance[column]!) {
          distance[column] = through
          before[column] = last
        }
        if (nearest < 0 || distance[column]! < distance[nearest]!) nearest = column
      }
      shortest = distance[nearest]!
      done[nearest] = 1
      if (rowOf[nearest]! < 0) reached = nearest
      else {
        row = rowOf[nearest]!
        last = nearest
      }
    }
    rowPrice[from]! += shortest
    for (let column = 0; column < width; column++)
      if (done[column] && column !== reached) {
        rowPrice[rowOf[column]!]! += shortest - distance[column]!
        columnPrice[column]! -= shortest - distance[column]!
      }
    for (let column = reached; ; ) {
      const previous = before[column]!
      rowOf[column] = previous < 0 ? from : rowOf[previous]!
      if (previous < 0) break
      column = previous
    }
  }
  const columns = new Array<number>(rows).fill(-1)
  rowOf.forEach((row, column) => {
    if (row >= 0) columns[row] = column
  })
  return { columns, cost: columns.reduce((sum, column, row) => sum + costs[row]![column]!, 0) }
}
