/** The spreadsheet of a small nursery on a Monday in March: something stands at every step of its life. */
import writeExcelFile from 'write-excel-file/node'

type Cell = string | number
const sheets: Readonly<Record<string, readonly (readonly Cell[])[]>> = {
  Nursery: [
    ['Nursery', 'Latitude', 'Longitude', 'Height above sea'],
    ['Sallow Reach Nursery', 38, 0, 40],
  ],
  Benches: [
    ['Bench', 'Kind of place', 'Square metres'],
    ['Warm bed', 'hot bed', 12],
    ['Mist bed', 'mist bed', 12],
    ['Long shade', 'shade house', 120],
    ['Harbour tunnel', 'tunnel', 200],
    ['Yard', 'standing ground', 400],
    ['Cold room', 'cold store', 10],
  ],
  People: [
    ['Person', 'Can do', 'Hours a week'],
    ['Ilo', 'all', 8.5],
  ],
  'Mother trees': [
    ['Mother tree', 'Tree', 'Planted', 'Cuttings a year'],
    ['M07', 'Fig ‘Brown Pilgrim’', '2014-03-10', 1200],
    ['M09', 'Olive ‘Silver Stair’', '2010-04-02', 900],
  ],
  'Batches on hand': [
    ['Batch', 'Tree', 'Alive now', 'Started with', 'Started on', 'Stage', 'Mother tree', 'Bench'],
    ['26-012', 'Fig ‘Brown Pilgrim’', 150, 200, '2026-02-16', 'finished', 'M07', 'Yard'],
    ['27-002', 'Fig ‘Brown Pilgrim’', 240, 240, '2026-12-21', 'rooting', 'M07', 'Warm bed'],
    ['26-050', 'Olive ‘Silver Stair’', 160, 180, '2026-12-14', 'rooting', 'M09', 'Mist bed'],
  ],
  Orders: [
    ['Order', 'Buyer', 'Tree', 'Number', 'Due', 'Not before'],
    ['O-1', 'Gull Lane orchard', 'Fig ‘Brown Pilgrim’', 90, '2027-02-19', '2027-02-08'],
    ['O-2', 'Quince House', 'Fig ‘Brown Pilgrim’', 260, '2028-02-28', ''],
    ['O-3', 'Kite Hill smallholding', 'Olive ‘Silver Stair’', 40, '2028-10-31', ''],
  ],
}

export const workbook = (): Promise<Buffer> =>
  writeExcelFile(
    Object.entries(sheets).map(([sheet, rows]) => ({
      sheet,
      data: rows.map(row => row.map(value => ({ value, type: typeof value === 'number' ? Number : String }))),
    })),
  ).toBuffer()

/** The two counts of the week, of all that stand. */
export const GOOD = { name: '27-002', taken: 226, dead: 14 } as const
export const BAD = { name: '26-050', taken: 22, dead: 138 } as const
/** Cuttings really stuck in each start, whatever the plan asked for. */
export const STUCK = 97
/** Trees of the order that is due in this week, ready since last year. */
export const SENT = 90
