import { isDay } from '../../../science/index.ts'
import { folded } from '../../data/folded.ts'

export interface PastedOrder {
  readonly row: number
  readonly kind: string
  readonly number: number
  readonly due: string
  readonly buyer: string
  readonly sure: number
}

export interface PastedTrouble {
  readonly row: number
  readonly what: 'kind' | 'kindMany' | 'number' | 'due' | 'sure' | 'few'
  readonly said: string
}

const COLUMNS = ['kind', 'number', 'due', 'buyer', 'sure'] as const
type Column = (typeof COLUMNS)[number]

/** What people call the columns, in English and Spanish, without accents. From memory of order lists. */
const HEADERS: Readonly<Record<Column, readonly string[]>> = {
  kind: [
    ...['kind', 'tree', 'variety', 'cultivar', 'plant', 'item', 'fruit', 'species', 'product', 'description'],
    ...[
      'clase',
      'arbol',
      'variedad',
      'planta',
      'frutal',
      'fruta',
      'especie',
      'producto',
      'articulo',
      'descripcion',
    ],
  ],
  number: [
    ...[
      'number',
      'quantity',
      'qty',
      'trees',
      'plants',
      'count',
      'how many',
      'amount',
      'units',
      'pieces',
      'no',
      'ordered',
    ],
    ...[
      'cantidad',
      'cant',
      'numero',
      'n',
      'num',
      'arboles',
      'plantas',
      'cuantos',
      'cuantas',
      'unidades',
      'uds',
      'piezas',
    ],
  ],
  due: [
    ...[
      'due',
      'due date',
      'needed by',
      'wanted by',
      'date',
      'date required',
      'required',
      'delivery',
      'delivery date',
    ],
    ...['deliver by', 'ready by', 'by', 'when'],
    ...[
      'fecha',
      'fecha de entrega',
      'fecha entrega',
      'entrega',
      'entregar',
      'para cuando',
      'para el',
      'vence',
      'cuando',
    ],
  ],
  buyer: [
    ...['buyer', 'customer', 'client', 'for', 'for whom', 'grower', 'farm', 'name', 'company'],
    ...[
      'comprador',
      'cliente',
      'para',
      'para quien',
      'destinatario',
      'finca',
      'agricultor',
      'nombre',
      'empresa',
    ],
  ],
  sure: [
    ...['sure', 'sureness', 'chance', 'how sure', 'certainty'],
    ...['seguridad', 'certeza', 'probabilidad', 'seguro'],
  ],
}

/** A header without what stands in brackets, signs and points: `Qty. (trees)` is `qty`. */
const headerOf = (cell: string): string =>
  folded(cell)
    .replace(/\(.*?\)/g, ' ')
    .replace(/[^\p{L}\s]|[ºª]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()

const DEFAULT_SURE = 0.9

const splitRow = (line: string): readonly string[] => {
  const mark = line.includes('\t') ? '\t' : line.includes(';') ? ';' : ','
  return line.split(mark).map(cell => cell.trim().replace(/^"(.*)"$/, '$1'))
}

/** The order of the columns if the first row names them, else the usual one. */
const columnsOf = (first: readonly string[]): readonly (Column | undefined)[] | null => {
  const found = first.map(cell => COLUMNS.find(column => HEADERS[column].includes(headerOf(cell))))
  return found.filter(column => column !== undefined).length >= 2 ? found : null
}

/** `1,200`, `1.200`, `1 200` and `1200` are all twelve hundred: trees come whole. */
const wholeNumber = (text: string): number | null => {
  const plain = text.replace(/[\s  ]/g, '').replace(/[.,](?=\d{3}(\D|$))/g, '')
  return /^\d+$/.test(plain) && Number(plain) > 0 ? Number(plain) : null
}

const dayOf = (text: string, dayFirst: boolean): string | null => {
  if (isDay(text)) return text
  const parts = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(text)
  if (parts === null) return null
  const [date, month] = dayFirst ? [parts[1]!, parts[2]!] : [parts[2]!, parts[1]!]
  const day = `${parts[3]}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`
  return isDay(day) ? day : null
}

const shareOf = (text: string): number | null => {
  if (text === '') return DEFAULT_SURE
  const value = Number(text.replace('%', '').replace(',', '.').trim())
  const share = value > 1 ? value / 100 : value
  return share >= 0.5 && share <= 0.99 ? share : null
}

/** Orders from rows of a spreadsheet, and what could not be read. A bad row never costs a good one. */
export const readPasted = (
  text: string,
  kinds: readonly { readonly id: string; readonly name: string }[],
  dayFirst: boolean,
): { readonly orders: readonly PastedOrder[]; readonly troubles: readonly PastedTrouble[] } => {
  const orders: PastedOrder[] = []
  const troubles: PastedTrouble[] = []
  const lines = text.split(/\r?\n/).map((line, index) => ({ row: index + 1, cells: splitRow(line) }))
  const named = columnsOf(lines[0]?.cells ?? [])
  const columns = named ?? COLUMNS

  const kindOf = (said: string): string | 'kind' | 'kindMany' => {
    const wanted = folded(said)
    const exact = kinds.find(({ id, name }) => folded(id) === wanted || folded(name) === wanted)
    if (exact !== undefined) return `id ${exact.id}`
    const words = wanted.split(/\s+/)
    const near = kinds.filter(({ name }) => words.every(word => folded(name).includes(word)))
    return near.length === 1 ? `id ${near[0]!.id}` : near.length === 0 ? 'kind' : 'kindMany'
  }

  for (const { row, cells } of named === null ? lines : lines.slice(1)) {
    if (cells.every(cell => cell === '')) continue
    const said = (column: Column) => cells[columns.indexOf(column)] ?? ''
    if (said('kind') === '' || said('number') === '' || said('due') === '') {
      troubles.push({ row, what: 'few', said: cells.join(' ') })
      continue
    }
    const kind = kindOf(said('kind'))
    const number = wholeNumber(said('number'))
    const due = dayOf(said('due'), dayFirst)
    const sure = shareOf(said('sure'))
    if (kind === 'kind' || kind === 'kindMany') troubles.push({ row, what: kind, said: said('kind') })
    else if (number === null) troubles.push({ row, what: 'number', said: said('number') })
    else if (due === null) troubles.push({ row, what: 'due', said: said('due') })
    else if (sure === null) troubles.push({ row, what: 'sure', said: said('sure') })
    else orders.push({ row, kind: kind.slice(3), number, due, buyer: said('buyer'), sure })
  }
  return { orders, troubles }
}
