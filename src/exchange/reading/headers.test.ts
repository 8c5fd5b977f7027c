import { expect, test } from 'vitest'
import { guessKind } from './headers.ts'

/** Of a published table of seed trials: TBMF_Database.csv, github.com/efernandezpascual/sylvanseeds @5b88924. */
const seedTrials =
  'Taxon,TPLName,Family,Reference,Year,Country,Population,Latitude,Longitude,Dry_storage,Setting,Germinated,Number_seeds'.split(
    ',',
  )

test('a sheet of which hardly anything is known, and that lacks what its kind needs, is asked about unless its name tells', () => {
  expect(guessKind({ file: 'seeds.csv', sheet: null }, seedTrials)).toBeNull()
  expect(guessKind({ file: 'seeds.csv', sheet: null }, [...seedTrials, 'ACCENUMB'])).toBe('passport')
  expect(guessKind({ file: 'accessions.csv', sheet: null }, seedTrials)).toBe('passport')
})
