import * as z from 'zod'
import type { Table } from './table.ts'

const columnOf = (field: z.ZodType) =>
  z.object({ of: z.array(field), at: z.array(z.number().int()).optional() }).readonly()

/** The shape of a table of such rows. One without rows has no columns. */
export const tableOf = <Shape extends z.core.$ZodLooseShape>(row: z.ZodReadonly<z.ZodObject<Shape>>) => {
  const fields = Object.entries(row.unwrap().shape) as [string, z.ZodType][]
  const columns = Object.fromEntries(fields.map(([name, field]) => [name, columnOf(field)]))
  return z.object({ rows: z.number().int(), columns: z.object(columns).partial() }).readonly() as z.ZodType<
    Table<z.infer<typeof row>>
  >
}
