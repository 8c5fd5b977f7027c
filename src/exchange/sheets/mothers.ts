import type { Field, SheetForm } from './sheet-form.ts'
import { treeFields } from './tree-fields.ts'

const gives = (id: string, name: string, words: string, example: number | null): Field => ({
  id,
  name,
  says: 'that one tree may give in a year without harm',
  words,
  form: 'whole',
  example,
})

export const mothers: SheetForm = {
  kind: 'mothers',
  name: 'Mother trees',
  says: 'Trees that give cuttings, scions, budwood, layers or seed.',
  called:
    'mother trees, mothers, mother tree, mother plants, stock plants, scion trees, mother block, mutterbaume, mutterpflanzen, mutterbaum, pieds meres, pied mere, arbres meres, plantas madre, arboles madre, piante madri, plantas matrizes, moerbomen, moederplanten',
  oneOf: ['tree', 'cultivar'],
  fields: [
    {
      id: 'mother',
      name: 'Mother tree',
      says: 'its number or name with you',
      words:
        'mother tree, mother, mother id, id, no, nr, number, tree no, tree number, tree id, label, plant no, mutterbaum, mutterpflanze, nummer, baum nr, baumnummer, pied mere, numero, arbre, n, planta madre, pianta madre, moerboom',
      form: 'text',
      example: 'M07',
    },
    {
      id: 'name',
      name: 'Name',
      says: 'what people call it, where that is not its number',
      words: 'name, mother name, tree name, called',
      form: 'text',
      example: null,
    },
    ...treeFields({ tree: 'Fig ‘Brown Pilgrim’' }).filter(({ id }) =>
      ['tree', 'fruit', 'cultivar'].includes(id),
    ),
    {
      id: 'gives rootstock',
      name: 'Gives rootstock',
      says: 'for stool beds and seed trees: the rootstock that comes of it',
      words:
        'gives rootstock, rootstock, rootstock kind, for rootstock, unterlage, porte greffe, portainjerto, portinnesto',
      form: 'text',
      example: null,
    },
    {
      id: 'trees',
      name: 'How many',
      says: 'trees under this number; otherwise one',
      words:
        'how many, trees, count, plants, number of trees, anzahl, stuck, nombre, cantidad, numero di piante, aantal, qty, quantity',
      form: 'whole',
      example: 1,
    },
    {
      id: 'block',
      name: 'Block',
      says: 'where it stands',
      words:
        'block, location, place, plot, field, row, standort, quartier, reihe, parcelle, emplacement, rang, bloque, parcela, fila, blocco, posizione, perceel, standplaats',
      form: 'text',
      example: 'Wall block',
    },
    {
      id: 'x',
      name: 'Metres east',
      says: 'on the plan of the block',
      words: 'metres east, x, x metres, east, rechtswert, easting',
      form: 'metres',
      example: 10,
    },
    {
      id: 'y',
      name: 'Metres north',
      says: 'on the plan of the block',
      words: 'metres north, y, y metres, north, hochwert, northing',
      form: 'metres',
      example: 4,
    },
    {
      id: 'planted',
      name: 'Planted',
      says: 'day or year',
      words:
        'planted, year planted, planting date, date planted, gepflanzt, pflanzjahr, pflanzdatum, plante, plantation, annee de plantation, plantado, plantacion, piantato, impianto, geplant, plantjaar',
      form: 'day',
      example: '2014',
    },
    {
      id: 'provenance',
      name: 'Where from',
      says: 'where its wood came from, and who saw that it is true to name',
      words:
        'where from, provenance, origin, source, supplier, herkunft, lieferant, provenance origine, origine, procedencia, origen, provenienza, herkomst, donor',
      form: 'text',
      example: 'Worked here from a tree whose fruit was seen',
    },
    gives(
      'cuttings',
      'Cuttings a year',
      'cuttings a year, cuttings, cuttings per year, stecklinge, steckholzer, boutures, esquejes, talee, stekken',
      300,
    ),
    gives(
      'scion sticks',
      'Scion sticks a year',
      'scion sticks a year, scions, scion wood, scion sticks, sticks, reiser, edelreiser, greffons, puas, marze, enthout',
      null,
    ),
    gives(
      'budwood',
      'Budsticks a year',
      'budsticks a year, budwood, budsticks, bud wood, okulierreiser, augen, bois d ecussonnage, yemas, gemme',
      null,
    ),
    gives(
      'branches',
      'Air layers a year',
      'air layers a year, air layers, branches, marcots, layers, abmoosungen, marcottes, acodos, margotte',
      null,
    ),
    gives(
      'shoots',
      'Shoots a year',
      'shoots a year, shoots, stool shoots, rooted shoots, triebe, abrisse, pousses',
      null,
    ),
    gives('offsets', 'Offsets a year', 'offsets a year, offsets, suckers, auslaufer, rejets, hijuelos', null),
    gives(
      'seed',
      'Seed a year',
      'seed a year, seed, seeds, seeds per year, samen, graines, semillas, semi, zaad',
      null,
    ),
    {
      id: 'months',
      name: 'Gives in',
      says: 'months in which it gives: May to Jul; otherwise those in which its wood is used',
      words: 'gives in, months, giving months, season of wood, gibt in, monate, mois, meses, mesi, maanden',
      form: 'text',
      example: 'May to Jul',
    },
    {
      id: 'gives',
      name: 'What it gives',
      says: 'all in one cell instead: 300 cuttings in May to Jul, at most 30 a week; 60 scion sticks in Jan, Feb',
      words: 'what it gives, gives, gives per year, yields, gibt, donne, da, geeft',
      form: 'text',
      example: null,
    },
    {
      id: 'retired',
      name: 'Retired',
      says: 'day on which it was given up; empty while it stands',
      words: 'retired, given up, removed, grubbed, gerodet, entfernt, arrache, arrancada, estirpata, gerooid',
      form: 'day',
      example: null,
    },
  ],
}
