import type { CapacityRow } from '../rules/capacity.ts'
import { rowName } from './drafting.ts'
import type { LinearModel } from './season-model.ts'

export interface MpsOptions {
  /** Capacities that were full in some solve; rows that no plan fills are left out of the file as of the model. */
  readonly capacities?: readonly CapacityRow[]
  /** Whole numbers are marked as such; otherwise the relaxation is written. */
  readonly isWhole?: boolean
}

/**
 * The model in free MPS format, for any other solver of linear or mixed-integer programs. Rows are R0, R1 …, columns
 * C0, C1 …; comments at the head give each its name.
 * @source MPS format as described in the documentation of GLPK and CBC; sections NAME, ROWS, COLUMNS, RHS, RANGES, BOUNDS
 */
export function toMps(model: LinearModel, { capacities = [], isWhole = false }: MpsOptions = {}): string {
  const { columns, rows } = model
  const lines: string[] = ['* Season model: minimise the cost of a plan']
  const abouts = [...rows.about, ...capacities]
  for (const [r, about] of abouts.entries()) lines.push(`* R${r} = ${rowName(about)}`)
  for (let c = 0; c < columns.count; c++) lines.push(`* C${c} = ${columns.name(c)}`)

  const lower = (r: number) => (r < rows.count ? rows.lower[r]! : Number.NEGATIVE_INFINITY)
  const upper = (r: number) => (r < rows.count ? rows.upper[r]! : capacities[r - rows.count]!.upper)
  lines.push('NAME season', 'ROWS', ' N COST')
  for (const r of abouts.keys()) lines.push(` ${senseOf(lower(r), upper(r))} R${r}`)

  const more = capacityEntries(model, capacities)
  lines.push('COLUMNS')
  let isInWhole = false
  for (let c = 0; c < columns.count; c++) {
    const whole = isWhole && columns.isWhole[c] === 1
    if (whole !== isInWhole) lines.push(` MARKER 'MARKER' '${whole ? 'INTORG' : 'INTEND'}'`)
    isInWhole = whole
    lines.push(` C${c} COST ${columns.cost[c]}`)
    for (let e = model.columnStarts[c]!; e < model.columnStarts[c + 1]!; e++)
      lines.push(` C${c} R${model.indices[e]} ${model.values[e]}`)
    for (const { row, value } of more[c]!) lines.push(` C${c} R${row} ${value}`)
  }
  if (isInWhole) lines.push(` MARKER 'MARKER' 'INTEND'`)

  lines.push('RHS')
  const ranges: string[] = []
  abouts.forEach((_, r) => {
    const [low, high] = [lower(r), upper(r)]
    const right = Number.isFinite(high) ? high : low
    if (Number.isFinite(right) && right !== 0) lines.push(` RHS R${r} ${right}`)
    if (Number.isFinite(low) && Number.isFinite(high) && low !== high)
      ranges.push(` RANGE R${r} ${high - low}`)
  })
  if (ranges.length > 0) lines.push('RANGES', ...ranges)

  lines.push('BOUNDS')
  for (let c = 0; c < columns.count; c++) {
    const [low, high] = [columns.lower[c]!, columns.upper[c]!]
    if (low === high) lines.push(` FX BOUND C${c} ${low}`)
    else {
      if (low === Number.NEGATIVE_INFINITY) lines.push(` MI BOUND C${c}`)
      else if (low !== 0) lines.push(` LO BOUND C${c} ${low}`)
      if (Number.isFinite(high)) lines.push(` UP BOUND C${c} ${high}`)
      // Some readers take a whole column without an upper bound for a yes or no.
      else if (isWhole && columns.isWhole[c] === 1) lines.push(` PL BOUND C${c}`)
    }
  }
  lines.push('ENDATA', '')
  return lines.join('\n')
}

function senseOf(low: number, high: number): 'N' | 'E' | 'L' | 'G' {
  if (low === high) return 'E'
  if (Number.isFinite(high)) return 'L'
  return Number.isFinite(low) ? 'G' : 'N'
}

function capacityEntries(model: LinearModel, capacities: readonly CapacityRow[]) {
  const entries: { row: number; value: number }[][] = Array.from({ length: model.columns.count }, () => [])
  capacities.forEach(({ columns, values }, k) => {
    columns.forEach((column, e) => {
      entries[column]!.push({ row: model.rows.count + k, value: values[e]! })
    })
  })
  return entries
}
