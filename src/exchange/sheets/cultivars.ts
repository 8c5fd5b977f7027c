import type { SheetForm } from './sheet-form.ts'
import { writtenId } from './written-id.ts'

export const cultivars: SheetForm = {
  kind: 'cultivars',
  name: 'Cultivars',
  says: 'Names, synonyms, and leave to propagate where a cultivar is protected.',
  called:
    'cultivars, cultivar, varieties, variety list, cultivar names, sorten, sortenliste, varietes, variedades, varieta, rassen, synonyms',
  fields: [
    {
      id: 'fruit',
      name: 'Fruit',
      says: 'common or botanical name',
      words:
        'fruit, crop, species, genus, botanical name, taxon, common name, obstart, art, espece, especie, specie, gewas, soort',
      form: 'text',
      example: 'Fig',
    },
    {
      id: 'cultivar',
      name: 'Cultivar',
      says: 'without quotation marks',
      words:
        'cultivar, variety, cultivar name, variety name, name, label, sorte, sortenname, variete, variedad, varieta, variedade, ras',
      form: 'text',
      needed: true,
      example: 'Brown Pilgrim',
    },
    {
      id: 'synonyms',
      name: 'Also called',
      says: 'other names, with commas or semicolons between',
      words:
        'also called, synonyms, synonym, syn, other names, aka, trade name, synonyme, sinonimos, sinonimi, synoniemen',
      form: 'text',
      example: null,
    },
    {
      id: 'owner',
      name: 'Owner of the right',
      says: 'of a protected cultivar',
      words:
        'owner of the right, owner, breeder, rights holder, licensor, inhaber, zuchter, obtenteur, titulaire, obtentor, titular, costitutore, houder',
      form: 'text',
      example: null,
    },
    {
      id: 'allowed',
      name: 'Trees allowed a year',
      says: 'by the licence; empty: no bound',
      words:
        'trees allowed a year, licence, license, allowed, licensed trees, quota, licence trees per year, lizenzmenge, licence annuelle, licencia, licenza',
      form: 'whole',
      example: null,
    },
    {
      id: 'fee',
      name: 'Fee for each tree',
      says: 'in your money',
      words: 'fee for each tree, royalty, fee, licence fee, lizenzgebuhr, redevance, regalia, royalties',
      form: 'number',
      example: null,
    },
    {
      id: 'until',
      name: 'Licence until',
      says: 'last day',
      words: 'licence until, until, expires, valid until, gultig bis, jusqu au, hasta, fino al, geldig tot',
      form: 'day',
      example: null,
    },
    writtenId,
  ],
}
