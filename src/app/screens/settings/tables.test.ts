import { expect, test } from 'vitest'
import { ENTRIES_FILE, packageFiles } from '../../../exchange/index.ts'
import { foldEntries } from '../../../record/index.ts'
import { DESCRIPTION, fileOf, TABLES } from './tables.ts'

test('every file that goes out is offered: each table, the record and what describes them', () => {
  expect([DESCRIPTION, ENTRIES_FILE, ...TABLES.map(fileOf)].sort()).toEqual(
    [...packageFiles(foldEntries([]))].sort(),
  )
})
