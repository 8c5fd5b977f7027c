import type { SheetForm } from './sheet-form.ts'

export const benches: SheetForm = {
  kind: 'benches',
  name: 'Benches',
  says: 'Places that hold plants, and how much room each has.',
  called:
    'benches, bench, places, space, beds, areas, houses, stellflachen, flachen, beete, hauser, tische, tablettes, emplacements, surfaces, bancales, mesas, espacios, bancali, spazi, bancadas, tafels, vakken',
  fields: [
    {
      id: 'bench',
      name: 'Bench',
      says: 'its name',
      words:
        'bench, name, place name, bed, bench name, id, house, area name, location, beet, tisch, stellflache, bezeichnung, haus, tablette, planche, nom, emplacement, bancal, mesa, nombre, cama, bancale, nome, vak, tafel, naam, no, nr',
      form: 'text',
      needed: true,
      example: 'Mist bed 1',
    },
    {
      id: 'place',
      name: 'Kind of place',
      says: 'mist bed, hot bed, seed house, healing tent, cold store, shade house, tunnel, standing ground, field row, mother block',
      words:
        'kind of place, kind, type, place, use, used for, climate, art, typ, nutzung, verwendung, type d emplacement, usage, genre, tipo, uso, tipo di posto, soort',
      form: 'text',
      example: 'mist bed',
    },
    {
      id: 'area',
      name: 'Square metres',
      says: 'that plants can stand on, paths not counted; or give length and width',
      words:
        'square metres, area, m2, sqm, size, area m2, space, net area, bench area, sq ft, square feet, area sq ft, flache, nutzflache, netto, qm, surface, surface utile, superficie, area utile, superficie utile, oppervlakte',
      form: 'square metres',
      example: 6,
    },
    {
      id: 'length',
      name: 'Length',
      says: 'metres',
      words: 'length, length m, long, lange, longueur, largo, longitud, lunghezza, comprimento, lengte',
      form: 'metres',
      example: 5,
    },
    {
      id: 'width',
      name: 'Width',
      says: 'metres',
      words: 'width, width m, wide, breite, largeur, ancho, larghezza, largura, breedte',
      form: 'metres',
      example: 1.2,
    },
    {
      id: 'closed',
      name: 'Closed days',
      says: 'first to last day, then how much of it, if not all, and why; several parted by semicolons',
      words:
        'closed days, closed, closed from to, not usable, out of use, gesperrt, geschlossen, sperrzeit, sperrzeiten, ferme, fermeture, jours fermes, cerrado, dias cerrados, chiuso, giorni chiusi, fechado, gesloten',
      form: 'days',
      example: '2027-06-01 to 2027-06-05: 2 m², new heating',
    },
  ],
}
