import type { SheetForm } from './sheet-form.ts'
import { treeFields } from './tree-fields.ts'

export const batches: SheetForm = {
  kind: 'batches',
  name: 'Batches on hand',
  says: 'Plants that stand in the nursery today, and how far they are.',
  called:
    'batches, batch, stock, stock list, inventory, on hand, lots, in production, wip, batches on hand, partien, partie, bestand, bestandsliste, kulturen, satze, satz, lots en culture, stocks, inventaire, existencias, lotes, inventario, lotti, giacenze, partijen, voorraad',
  oneOf: ['tree', 'fruit', 'cultivar'],
  fields: [
    {
      id: 'batch',
      name: 'Batch',
      says: 'its number or name with you',
      words:
        'batch, batch no, batch number, lot, lot no, lot number, id, no, nr, batch id, satz, satznummer, partie, partie nr, charge, chargennummer, numero de lot, lote, numero de lote, lotto, numero lotto, partij, partijnummer, stock no',
      form: 'text',
      example: '26-041',
    },
    ...treeFields({ tree: 'Fig ‘Brown Pilgrim’' }),
    {
      id: 'number',
      name: 'Alive now',
      says: 'plants that stand there',
      words:
        'alive now, alive, number, quantity, qty, on hand, in stock, stock, count, number now, current, current number, plants, balance, live, bestand, anzahl, menge, lebend, stuck, vorhanden, quantite, vivants, nombre, en stock, cantidad, vivas, existencia, quantita, vivi, numero, aantal, in voorraad, levend',
      form: 'whole',
      needed: true,
      example: 210,
    },
    {
      id: 'started',
      name: 'Started with',
      says: 'so that losses teach; empty where it is not known',
      words:
        'started with, number started, started number, initial, initial number, stuck number, stuck, sown number, worked number, original, angesetzt, gesteckt, anfangsbestand, mis en culture, initiale, inicial, plantadas, iniziale, gestart met, start number, set, number set, n started',
      form: 'whole',
      example: 260,
    },
    {
      id: 'startedOn',
      name: 'Started on',
      says: 'day of sowing, sticking, ringing, grafting or budding',
      words:
        'started on, start date, started, date, date started, date stuck, date sown, date grafted, grafted on, stuck on, sown on, begun, datum, gesteckt am, ausgesat am, veredelt am, beginn, start, date de depart, date de mise en culture, date, fecha, fecha de inicio, inicio, data, data inizio, startdatum',
      form: 'day',
      example: '2026-02-10',
    },
    {
      id: 'stage',
      name: 'Stage',
      says: 'rooting, healing, weaning, growing on, finished; otherwise told by its age',
      words:
        'stage, step, phase, status, state, growth stage, stadium, stufe, kulturstand, etape, stade, etapa, fase, estado, stadio, stato, fase coltura',
      form: 'text',
      example: 'growing on',
    },
    {
      id: 'bench',
      name: 'Bench',
      says: 'where it stands',
      words:
        'bench, place, location, bed, area, house, position, standort, beet, tisch, stellplatz, emplacement, tablette, ubicacion, bancal, mesa, posizione, bancale, plaats, vak, tafel',
      form: 'text',
      example: 'Harbour tunnel',
    },
    {
      id: 'mother',
      name: 'Mother tree',
      says: 'what it was taken from',
      words:
        'mother tree, mother, source, scion source, from, mother plant, mutterbaum, mutterpflanze, pied mere, planta madre, pianta madre, moederplant',
      form: 'text',
      example: 'M07',
    },
    {
      id: 'by',
      name: 'Worked by',
      says: 'who stuck, grafted or sowed it',
      words:
        'worked by, by, grafter, worker, person, who, propagator, von, veredler, mitarbeiter, par, greffeur, por, injertador, da, innestatore, door',
      form: 'text',
      example: 'Ilo',
    },
    {
      id: 'countedOn',
      name: 'Counted on',
      says: 'the day of this number; otherwise today',
      words:
        'counted on, count date, date counted, as of, stock date, gezahlt am, stand, compte le, contado el, contato il, geteld op',
      form: 'day',
      example: null,
    },
  ],
}
