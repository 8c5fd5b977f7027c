import type { Field, SheetForm } from './sheet-form.ts'

const descriptor = (id: string, says: string, words = '', example: string | null = null): Field => ({
  id,
  name: id,
  says,
  words: [id, words].filter(part => part !== '').join(', '),
  form: 'text',
  example,
})

/**
 * Passport data of a germplasm collection. The fields and their names are the standard's.
 * @source FAO and Bioversity International, Multi-crop passport descriptors V.2.1, 2015
 */
export const passport: SheetForm = {
  kind: 'passport',
  name: 'Passport data',
  says: 'Accessions of a collection, by the multi-crop passport descriptors 2.1; they come in as mother trees.',
  called:
    'passport, accessions, germplasm, mcpd, genebank, collection, akzessionen, passeport, accesiones, accessioni',
  oneOf: ['ACCENUMB', 'ACCENAME', 'GENUS', 'CROPNAME'],
  fields: [
    descriptor('PUID', 'persistent unique identifier', 'doi'),
    descriptor('INSTCODE', 'institute that holds it', 'holding institute', 'ABC001'),
    descriptor(
      'ACCENUMB',
      'accession number',
      'accession number, accession, accession no, national id, nationalid, inventory number',
      'F-0017',
    ),
    descriptor('COLLNUMB', 'collecting number', 'collno, collecting number, collector number'),
    descriptor('COLLCODE', 'collecting institute'),
    descriptor('COLLNAME', 'collecting institute’s name'),
    descriptor('COLLINSTADDRESS', 'collecting institute’s address'),
    descriptor('COLLMISSID', 'collecting mission'),
    descriptor('GENUS', 'genus', 'genus', 'Ficus'),
    descriptor('SPECIES', 'species epithet', 'species', 'carica'),
    descriptor('SPAUTHOR', 'author of the species'),
    descriptor('SUBTAXA', 'subspecies, variety, form'),
    descriptor('SUBTAUTHOR', 'author of the subtaxon'),
    descriptor('CROPNAME', 'common crop name', 'crop name, crop, common name, commonname', 'fig'),
    descriptor('ACCENAME', 'accession name', 'accession name, cultivar, variety', 'Brown Pilgrim'),
    descriptor('ACQDATE', 'acquisition date, yyyymmdd', 'acquisition date, transfer year', '20140310'),
    descriptor(
      'ORIGCTY',
      'country of origin, ISO 3166-1',
      'country of origin, source country, origin country, country',
    ),
    descriptor('COLLSITE', 'collecting site'),
    descriptor('DECLATITUDE', 'latitude, decimal degrees', 'latitude'),
    descriptor('LATITUDE', 'latitude, degrees minutes seconds'),
    descriptor('DECLONGITUDE', 'longitude, decimal degrees', 'longitude'),
    descriptor('LONGITUDE', 'longitude, degrees minutes seconds'),
    descriptor('COORDUNCERT', 'uncertainty of the coordinates, metres'),
    descriptor('COORDDATUM', 'coordinate datum'),
    descriptor('GEOREFMETH', 'how it was georeferenced'),
    descriptor('ELEVATION', 'metres above sea level', 'altitude'),
    descriptor('COLLDATE', 'collecting date'),
    descriptor('BREDCODE', 'breeding institute'),
    descriptor('BREDNAME', 'breeding institute’s name', 'breeder'),
    descriptor('SAMPSTAT', 'biological status', 'biological status, bio status, biostatus', '500'),
    descriptor('ANCEST', 'ancestral data', 'pedigree'),
    descriptor('COLLSRC', 'collecting source'),
    descriptor('DONORCODE', 'donor institute'),
    descriptor('DONORNAME', 'donor institute’s name', 'donor'),
    descriptor('DONORNUMB', 'donor’s accession number', 'donor number, donor id, donorid'),
    descriptor('OTHERNUMB', 'other numbers', 'other numbers, otherid1, other id'),
    descriptor('DUPLSITE', 'where a safety duplicate is'),
    descriptor('DUPLINSTNAME', 'safety duplicate: institute’s name'),
    descriptor('STORAGE', 'type of storage'),
    descriptor('MLSSTAT', 'status in the multilateral system'),
    descriptor('REMARKS', 'remarks', 'remarks, notes, comments'),
    descriptor(
      'botanical',
      'genus and species in one',
      'botanical name, botanicalname, scientific name, taxon, taxon name',
    ),
  ],
}
