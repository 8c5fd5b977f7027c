import type { SheetForm } from './sheet-form.ts'
import { treeFields } from './tree-fields.ts'
import { writtenId } from './written-id.ts'

export const kinds: SheetForm = {
  kind: 'kinds',
  name: 'What we grow',
  says: 'Kinds of tree and of rootstock, each with the ways to make it.',
  called:
    'kinds, what we grow, catalogue, catalog, product list, price list, plant list, range, assortment, items, sortiment, sortimentsliste, katalog, preisliste, catalogue de plantes, tarif, catalogo, lista de plantas, listino, assortiment',
  oneOf: ['tree', 'fruit', 'cultivar'],
  fields: [
    ...treeFields({
      tree: 'Apple ‘Evening Bell’ on Apple layer stock',
      fruit: 'Apple',
      cultivar: 'Evening Bell',
      rootstock: 'Apple layer stock',
      size: 'bare root, one year',
    }).map(field => (field.id === 'tree' ? { ...field, words: `${field.words}, name` } : field)),
    {
      id: 'price',
      name: 'Price',
      says: 'for each tree',
      words: 'price, unit price, sale price, preis, verkaufspreis, prix, precio, prezzo, preco, prijs',
      form: 'number',
      example: 11,
    },
    {
      id: 'buyIn',
      name: 'Price to buy in',
      says: 'ready-made from elsewhere; empty where it cannot be bought',
      words:
        'price to buy in, buy in price, buy in, cost, purchase price, einkaufspreis, zukauf, prix d achat, precio de compra, prezzo di acquisto, inkoopprijs',
      form: 'number',
      example: null,
    },
    {
      id: 'notice',
      name: 'Weeks of notice',
      says: 'for buying in; otherwise eight',
      words:
        'weeks of notice, buy in weeks notice, notice, lead time, lead time weeks, lieferzeit, delai, plazo, preavviso, levertijd',
      form: 'whole',
      example: null,
    },
    {
      id: 'mostPerWeek',
      name: 'Most to buy in a week',
      says: 'otherwise five hundred',
      words: 'most to buy in a week, buy in most per week',
      form: 'number',
      example: null,
    },
    writtenId,
    {
      id: 'holding',
      name: 'Cost to keep it a week',
      says: 'of a kind with an id: what it costs to keep one finished tree another week',
      words: 'cost to keep it a week, holding cost per week',
      form: 'number',
      example: null,
    },
    {
      id: 'ways',
      name: 'Protocols',
      says: 'of a kind with an id: ids of the ways to make it, parted by semicolons',
      words: 'protocols, ways',
      form: 'text',
      example: null,
    },
  ],
}
