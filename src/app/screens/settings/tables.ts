/** The tables that the office gives out, one file each. */
export const TABLES = [
  'orders',
  'batches',
  'stands',
  'mothers',
  'kinds',
  'cultivars',
  'benches',
  'people',
] as const

export const fileOf = (table: (typeof TABLES)[number]): string => `${table}.csv`

/** What each column of the tables means, after the data package standard. */
export const DESCRIPTION = 'datapackage.json'
