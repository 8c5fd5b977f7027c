import { expect, test } from 'vitest'
import { readSpans, spansIn, spansText } from './spans.ts'

const read = (
  cell: string,
  order: 'day first' | 'month first' | null = null,
  mark: 'point' | 'comma' = 'point',
) => readSpans(cell, { order, mark, today: '2026-11-25' })

// Ways of writing: common practice, no source. A square foot is 0.09290304 m² (NIST SP 811, appendix B).
test.each([
  ['2027-06-01 to 2027-06-05', '2027-06-01 to 2027-06-05'],
  ['2027-06-01/2027-06-05', '2027-06-01 to 2027-06-05'],
  ['1.6.2027 – 5.6.2027; 24.12.2027', '2027-06-01 to 2027-06-05; 2027-12-24 to 2027-12-24'],
  ['1.6.2027 bis 5.6.2027 (neue Heizung)', '2027-06-01 to 2027-06-05: neue Heizung'],
  ['3 to 9 March 2027: 2.5 m², new heating', '2027-03-03 to 2027-03-09: 2.5 m², new heating'],
  ['1-5.6.2027', null],
  ['del 2027', null],
  ['2027-06-05 to 2027-06-01', null],
  ['June 2027', null],
  ['2027-06-01 to 2027-06-05: heating; and paint', '2027-06-01 to 2027-06-05: heating; and paint'],
  ['3/13/2027 to 3/20/2027: 100 sq ft', '2027-03-13 to 2027-03-20: 9.290304 m²'],
])('days "%s" are read as %s', (cell, text) => {
  const reading = read(cell)
  expect(reading.kind === 'value' ? reading.value : null).toBe(text)
})

test('which of day and month comes first goes as the column says', () => {
  expect(read('3/4/2027 to 5/4/2027', 'day first')).toMatchObject({ value: '2027-04-03 to 2027-04-05' })
  expect(read('3/4/2027 to 3/5/2027', 'month first')).toMatchObject({ value: '2027-03-04 to 2027-03-05' })
  expect(read('3/4/2027 to 5/4/2027').kind).toBe('wrong')
})

test('what is written out is read back as it was', () => {
  const spans = [
    { from: '2027-06-01', to: '2027-06-05', squareMetres: 2.5, why: 'new heating; and paint, green' },
    { from: '2027-06-07', to: '2027-06-07', squareMetres: null, why: '' },
    { from: '2027-07-01', to: '2027-07-02', squareMetres: null, why: 'fair' },
  ]
  expect(spansIn(spansText(spans))).toEqual(spans)
  expect(read(spansText(spans))).toMatchObject({ value: spansText(spans) })
})
