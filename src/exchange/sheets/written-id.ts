import type { Field } from './sheet-form.ts'

/** The id of a thing in a table that was written out: other tables name it by that. */
export const writtenId: Field = {
  id: 'id',
  name: 'Id',
  says: 'by which other tables that were written out name it',
  words: 'id',
  form: 'text',
  example: null,
}
