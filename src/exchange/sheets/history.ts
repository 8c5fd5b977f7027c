import type { SheetForm } from './sheet-form.ts'
import { treeFields } from './tree-fields.ts'

export const history: SheetForm = {
  kind: 'history',
  name: 'Past batches',
  says: 'Batches of seasons gone by: begun with so many, so many alive in the end. They teach your own rates.',
  called:
    'history, past, past batches, results, records, old batches, trials, success rates, archive, rates, historie, vergangene, ergebnisse, erfolg, historique, resultats, historial, resultados, storico, risultati, historico, geschiedenis, resultaten',
  oneOf: ['tree', 'fruit', 'cultivar'],
  fields: [
    {
      id: 'batch',
      name: 'Batch',
      says: 'its number or name with you',
      words:
        'batch, batch no, batch number, lot, lot no, id, no, nr, batch id, satz, partie, charge, numero de lot, lote, lotto, partij, partijnummer',
      form: 'text',
      example: '24-012',
    },
    ...treeFields({ tree: 'Fig ‘Brown Pilgrim’' }),
    {
      id: 'started',
      name: 'Started with',
      says: 'cuttings stuck, seeds sown, plants worked',
      words:
        'started with, started, number started, n, total, initial, number, quantity, stuck, sown, seeds, number seeds, seeds sown, grafted, budded, worked, set, cuttings, n started, angesetzt, gesteckt, ausgesat, veredelt, anzahl, mis, semes, greffes, boutures, initiale, sembradas, injertados, inicial, seminati, innestati, iniziali, gestart, gestekt, geent',
      form: 'whole',
      needed: true,
      example: 300,
    },
    {
      id: 'startedOn',
      name: 'Started on',
      says: 'day of sowing, sticking, ringing, grafting or budding',
      words:
        'started on, start date, date started, date stuck, date sown, date grafted, date, day, begun, start, year, gesteckt am, ausgesat am, veredelt am, beginn, datum, date de depart, fecha, fecha inicio, data, data inizio, startdatum, jahr, annee, ano, anno',
      form: 'day',
      needed: true,
      example: '2024-02-12',
    },
    {
      id: 'taken',
      name: 'Rooted or taken',
      says: 'how many rooted, germinated or united, where it was counted',
      words:
        'rooted or taken, rooted, taken, take, struck, strike, germinated, emerged, united, grown in, angewachsen, bewurzelt, gekeimt, enracines, repris, germes, enraizados, prendidos, germinados, radicati, attecchiti, beworteld, aangeslagen',
      form: 'whole',
      example: 240,
    },
    {
      id: 'alive',
      name: 'Alive at the end',
      says: 'fit to sell, to work or to pot on',
      words:
        'alive at the end, alive, finished, saleable, sold, survived, survivors, final, final number, out, end, result, good, success, lebend, fertig, verkaufsfahig, uberlebt, vivants, vendables, finis, reussis, vivos, vendibles, terminados, sobrevivientes, vivi, vendibili, finiti, levend, klaar, verkoopbaar',
      form: 'whole',
      needed: true,
      example: 215,
    },
    {
      id: 'aliveOn',
      name: 'Ended on',
      says: 'the day of that number',
      words:
        'ended on, end date, date ended, finished on, date finished, counted on, count date, ready on, date counted, fertig am, ende, gezahlt am, date de fin, compte le, fecha fin, contado el, data fine, einddatum',
      form: 'day',
      example: '2024-11-04',
    },
    {
      id: 'mother',
      name: 'Mother tree',
      says: 'what it was taken from',
      words:
        'mother tree, mother, source, scion source, from, mutterbaum, mutterpflanze, pied mere, planta madre, pianta madre',
      form: 'text',
      example: null,
    },
    {
      id: 'bench',
      name: 'Bench',
      says: 'where it began',
      words:
        'bench, place, location, bed, beet, tisch, standort, emplacement, tablette, bancal, mesa, bancale, vak',
      form: 'text',
      example: 'Hot bed',
    },
    {
      id: 'by',
      name: 'Worked by',
      says: 'who stuck, grafted or sowed it',
      words:
        'worked by, by, grafter, worker, person, who, propagator, von, veredler, par, greffeur, por, injertador, da, innestatore, door',
      form: 'text',
      example: 'Ilo',
    },
  ],
}
