import type { LinearModel } from './season-model.ts'

/** Columns and rows of a model that no row ties to any other: a small model of its own. */
export interface Block {
  readonly columns: Int32Array
  readonly rows: Int32Array
}

/** The blocks of a model, the most of which kinds of tree that share neither mothers nor rootstocks make; loose columns are in none. */
export function blocksOf({ columns, rows, columnStarts, indices }: LinearModel): readonly Block[] {
  const root = Int32Array.from({ length: rows.count }, (_, r) => r)
  const find = (row: number): number => {
    let at = row
    while (root[at] !== at) {
      root[at] = root[root[at]!]!
      at = root[at]!
    }
    return at
  }
  for (let c = 0; c < columns.count; c++)
    for (let e = columnStarts[c]! + 1; e < columnStarts[c + 1]!; e++)
      root[find(indices[e]!)] = find(indices[columnStarts[c]!]!)
  const members = new Map<number, { columns: number[]; rows: number[] }>()
  for (let r = 0; r < rows.count; r++) {
    const of = find(r)
    const block = members.get(of)
    if (block) block.rows.push(r)
    else members.set(of, { columns: [], rows: [r] })
  }
  for (let c = 0; c < columns.count; c++)
    if (columnStarts[c]! < columnStarts[c + 1]!)
      members.get(find(indices[columnStarts[c]!]!))!.columns.push(c)
  // A row that no column enters asks nothing of anyone.
  const filled = [...members.values()].filter(block => block.columns.length > 0)
  return filled.map(block => ({
    columns: Int32Array.from(block.columns),
    rows: Int32Array.from(block.rows),
  }))
}

/** Blocks of fewer columns than `least` are put together to blocks of about so many: each has its cost of handing over. */
export function pooledBlocks(blocks: readonly Block[], least: number): readonly Block[] {
  const large = blocks.filter(({ columns }) => columns.length >= least)
  const pools: { columns: number[]; rows: number[] }[] = []
  for (const { columns, rows } of blocks) {
    if (columns.length >= least) continue
    const last = pools.at(-1)
    const pool = last && last.columns.length < least ? last : { columns: [], rows: [] }
    if (pool !== last) pools.push(pool)
    pool.columns.push(...columns)
    pool.rows.push(...rows)
  }
  const joined = pools.map(pool => ({
    columns: Int32Array.from(pool.columns).sort(),
    rows: Int32Array.from(pool.rows).sort(),
  }))
  return [...large, ...joined]
}

/** A block as a model of its own, its columns and rows in the order of the block. */
export function blockModel(model: LinearModel, block: Block): LinearModel {
  const { columns, rows } = model
  const rowOf = new Map<number, number>()
  block.rows.forEach((row, r) => {
    rowOf.set(row, r)
  })
  const columnStarts = new Int32Array(block.columns.length + 1)
  block.columns.forEach((column, c) => {
    columnStarts[c + 1] = columnStarts[c]! + model.columnStarts[column + 1]! - model.columnStarts[column]!
  })
  const indices = new Int32Array(columnStarts[block.columns.length]!)
  const values = new Float64Array(indices.length)
  block.columns.forEach((column, c) => {
    for (
      let e = model.columnStarts[column]!, to = columnStarts[c]!;
      e < model.columnStarts[column + 1]!;
      e++, to++
    ) {
      indices[to] = rowOf.get(model.indices[e]!)!
      values[to] = model.values[e]!
    }
  })
  const ofColumns = (all: Float64Array) => Float64Array.from(block.columns, column => all[column]!)
  const ofRows = (all: Float64Array) => Float64Array.from(block.rows, row => all[row]!)
  return {
    columns: {
      count: block.columns.length,
      cost: ofColumns(columns.cost),
      lower: ofColumns(columns.lower),
      upper: ofColumns(columns.upper),
      isWhole: Int32Array.from(block.columns, column => columns.isWhole[column]!),
      part: Array.from(block.columns, column => columns.part[column]!),
      name: column => columns.name(block.columns[column]!),
    },
    rows: {
      count: block.rows.length,
      lower: ofRows(rows.lower),
      upper: ofRows(rows.upper),
      about: Array.from(block.rows, row => rows.about[row]!),
    },
    columnStarts,
    indices,
    values,
  }
}
