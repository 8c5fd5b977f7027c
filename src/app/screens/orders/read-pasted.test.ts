import { describe, expect, test } from 'vitest'
import { readPasted } from './read-pasted.ts'

const kinds = [
  { id: 'plum-a', name: 'Plum Morgenrot on St Olaf' },
  { id: 'plum-b', name: 'Plum Morgenrot, cutting-grown' },
  { id: 'fig', name: 'Fig Kadota Lys' },
]

describe('orders pasted from a spreadsheet', () => {
  test('rows without names of columns are kind, number, due, buyer, sureness', () => {
    const { orders, troubles } = readPasted('fig\t1,200\t2027-05-31\tHill Farm\t95 %', kinds, true)
    expect(troubles).toEqual([])
    expect(orders).toEqual([
      { row: 1, kind: 'fig', number: 1200, due: '2027-05-31', buyer: 'Hill Farm', sure: 0.95 },
    ])
  })

  test('a first row with names sets another order, and a missing sureness is 90 %', () => {
    const { orders } = readPasted('Qty;Due;Variety\n40;04/05/2027;Fig Kadota Lys', kinds, true)
    expect(orders).toEqual([{ row: 2, kind: 'fig', number: 40, due: '2027-05-04', buyer: '', sure: 0.9 }])
  })

  test('headers are read in Spanish, and in the words that people use, with what they put in brackets', () => {
    const one = { row: 2, kind: 'fig', number: 40, due: '2027-05-04', buyer: 'Finca Alta', sure: 0.8 }
    for (const header of [
      'Cliente;Variedad;Cantidad;Fecha de entrega;Seguridad (%)',
      'Comprador;Árbol;Nº;Entrega;Certeza',
      'Customer;Item;Qty. (trees);Date required;How sure?',
    ])
      expect(readPasted(`${header}\nFinca Alta;fig;40;4/5/2027;80`, kinds, true)).toEqual({
        orders: [one],
        troubles: [],
      })
  })

  test('no two columns share a header', () => {
    const { orders } = readPasted('Para;Para el;Planta;Plantas\nFinca Alta;4/5/2027;fig;40', kinds, true)
    expect(orders).toMatchObject([{ kind: 'fig', number: 40, due: '2027-05-04', buyer: 'Finca Alta' }])
  })

  test('day or month first is as the reader says', () => {
    expect(readPasted('fig;1;4/5/2027', kinds, false).orders[0]!.due).toBe('2027-04-05')
    expect(readPasted('fig;1;31/5/2027', kinds, false).troubles[0]!.what).toBe('due')
  })

  test('a bad row is named with its number and never costs a good one', () => {
    const { orders, troubles } = readPasted(
      'fig;10;2027-01-05\nplum morgenrot;5;2027-01-05\npear;5;2027-01-05\nfig;some;2027-01-05\nfig;3\n\nfig;4;2027-01-05;x;30',
      kinds,
      true,
    )
    expect(orders.map(({ row }) => row)).toEqual([1])
    expect(troubles.map(({ row, what }) => [row, what])).toEqual([
      [2, 'kindMany'],
      [3, 'kind'],
      [4, 'number'],
      [5, 'few'],
      [7, 'sure'],
    ])
  })
})
