import type { SheetForm } from './sheet-form.ts'
import { treeFields } from './tree-fields.ts'

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
    }),
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
        'weeks of notice, notice, lead time, lead time weeks, lieferzeit, delai, plazo, preavviso, levertijd',
      form: 'whole',
      example: null,
    },
  ],
}
