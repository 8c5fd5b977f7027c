import { expect, test } from 'vitest'
import { csvOf } from './save-picture.ts'

// RFC 4180, section 2: fields with commas, quotes or line breaks are quoted, a quote is doubled, rows end in CRLF.
test('a saved table quotes as RFC 4180 says', () => {
  expect(
    csvOf([
      ['a', 1],
      ['b, "c"', 2.5],
      ['two\nlines', 0],
    ]),
  ).toBe('a,1\r\n"b, ""c""",2.5\r\n"two\nlines",0')
})

test('a cell that begins like a formula is written as text, a negative number stays a number', () => {
  expect(csvOf([['=1+1', -3]])).toBe("'=1+1,-3")
})
