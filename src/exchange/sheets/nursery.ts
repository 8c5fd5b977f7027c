import type { SheetForm } from './sheet-form.ts'

export const nursery: SheetForm = {
  kind: 'nursery',
  name: 'Nursery',
  says: 'Name and place: weeks, months and windows follow from it. One row.',
  called: 'nursery, site, place of nursery, baumschule, betrieb, pepiniere, vivero, vivaio, kwekerij',
  fields: [
    {
      id: 'name',
      name: 'Nursery',
      says: 'its name',
      words:
        'nursery, name, site, nursery name, baumschule, betrieb, pepiniere, vivero, vivaio, kwekerij, nom, nombre, nome, naam',
      form: 'text',
      needed: true,
      example: 'Sallow Reach Nursery',
    },
    {
      id: 'latitude',
      name: 'Latitude',
      says: 'degrees, south with a minus or an S',
      words: 'latitude, lat, breite, breitengrad, latitud, latitudine, breedtegraad',
      form: 'degrees',
      needed: true,
      example: 38,
    },
    {
      id: 'longitude',
      name: 'Longitude',
      says: 'degrees, west with a minus or a W',
      words: 'longitude, long, lon, lng, lange, langengrad, longitud, longitudine, lengtegraad',
      form: 'degrees',
      needed: true,
      example: 0,
    },
    {
      id: 'height',
      name: 'Height above sea',
      says: 'metres',
      words:
        'height above sea, height, altitude, elevation, hohe, hohe uber meer, altitud, altitudine, hoogte',
      form: 'metres',
      example: 40,
    },
  ],
}
