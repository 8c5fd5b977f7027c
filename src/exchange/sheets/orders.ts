import type { SheetForm } from './sheet-form.ts'
import { treeFields } from './tree-fields.ts'

export const orders: SheetForm = {
  kind: 'orders',
  name: 'Orders',
  says: 'Trees that are wanted: what, how many, by when.',
  called:
    'orders, order, order book, sales, sales orders, customer orders, wanted, bestellungen, bestellung, auftrage, auftrag, commandes, commande, pedidos, pedido, ordini, ordine, encomendas, bestellingen',
  oneOf: ['tree', 'fruit', 'cultivar'],
  fields: [
    {
      id: 'order',
      name: 'Order',
      says: 'its number or name with you',
      words:
        'order, order no, order number, order id, order ref, ref, reference, po, po number, no, nr, id, auftrag, auftragsnummer, auftragsnr, bestellnummer, bestellnr, bestellung, numero de commande, n commande, commande, n pedido, pedido, numero de pedido, ordine, n ordine, ordernummer, bestelnummer, encomenda',
      form: 'text',
      example: 'O-17',
    },
    {
      id: 'buyer',
      name: 'Buyer',
      says: 'who asks for them; empty for your own stock',
      words:
        'buyer, customer, client, customer name, name, ordered by, for, sold to, kunde, kundenname, besteller, abnehmer, acheteur, client nom, cliente, comprador, acquirente, comprador nome, klant, koper',
      form: 'text',
      example: 'Gull Lane orchard',
    },
    ...treeFields({ tree: 'Fig ‘Brown Pilgrim’', size: '3 l pot' }),
    {
      id: 'number',
      name: 'Number',
      says: 'how many trees',
      words:
        'number, quantity, qty, trees, plants, number of trees, how many, count, amount, pcs, pieces, units, ordered, quantity ordered, menge, anzahl, stuck, stuckzahl, bestellmenge, quantite, qte, nombre, nb, cantidad, cant, unidades, numero, quantita, qta, quantidade, aantal, stuks',
      form: 'whole',
      needed: true,
      example: 120,
    },
    {
      id: 'due',
      name: 'Due',
      says: 'the day by which they are needed',
      words:
        'due, needed by, due date, date due, delivery, delivery date, date, date required, required by, required, wanted by, by, when, deliver by, ship date, ready by, liefertermin, lieferdatum, termin, lieferung, bis, datum, faellig, fallig, date de livraison, livraison, echeance, pour le, fecha de entrega, entrega, fecha, data di consegna, consegna, data, data de entrega, leverdatum, levering',
      form: 'day',
      needed: true,
      example: '2027-03-01',
    },
    {
      id: 'earliest',
      name: 'Not before',
      says: 'otherwise six weeks before it is due',
      words:
        'not before, earliest, earliest date, from, from date, frühestens, fruhestens, ab, au plus tot, a partir de, no antes de, desde, non prima di, dal, vanaf',
      form: 'day',
      example: null,
    },
    {
      id: 'latest',
      name: 'Not after',
      says: 'after this day they are not taken; otherwise four weeks after it is due',
      words:
        'not after, latest, latest date, until, cancel after, deadline, spatestens, bis spatestens, au plus tard, a mas tardar, hasta, entro, al piu tardi, uiterlijk',
      form: 'day',
      example: null,
    },
    {
      id: 'sure',
      name: 'How sure',
      says: 'chance wanted that all are there in time; otherwise 90 %',
      words:
        'how sure, sure, sureness, confidence, certainty, service level, chance, sicherheit, wie sicher, certitude, seguridad, sicurezza, zekerheid',
      form: 'share',
      example: '90 %',
    },
    {
      id: 'price',
      name: 'Price',
      says: 'for each tree',
      words:
        'price, unit price, price each, each, rate, preis, einzelpreis, stuckpreis, prix, prix unitaire, pu, precio, precio unitario, prezzo, prezzo unitario, preco, prijs, stuksprijs',
      form: 'number',
      example: 9,
    },
    {
      id: 'placed',
      name: 'Placed',
      says: 'the day on which it was ordered',
      words:
        'placed, ordered on, order date, date ordered, date of order, bestelldatum, auftragsdatum, bestellt am, date de commande, fecha de pedido, data ordine, data do pedido, besteldatum',
      form: 'day',
      example: null,
    },
    {
      id: 'status',
      name: 'Status',
      says: 'an order that is delivered or cancelled is left out',
      words: 'status, state, done, delivered, statut, estado, stato, geliefert, livre, entregado',
      form: 'text',
      example: null,
    },
    {
      id: 'note',
      name: 'Note',
      says: 'anything else',
      words:
        'note, notes, remark, remarks, comment, comments, bemerkung, notiz, anmerkung, remarque, observaciones, nota, note varie, opmerking',
      form: 'text',
      example: null,
    },
  ],
}
