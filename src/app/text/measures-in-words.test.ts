import { expect, test } from 'vitest'
import { measuresInWords } from './measures-in-words.ts'

// An inch is 25.4 mm, a foot 0.3048 m, a pound 0.45359237 kg (NIST SP 811, appendix B).
test.each([
  ['sow 40-50 mm deep', 'sow 1.6-2 in deep'],
  ['a 15 cm x 25 cm bag', 'a 5.9 in x 9.8 in bag'],
  ['within 500 m of a tree', 'within 1640 ft of a tree'],
  ['574 to 615 kg a tree at 28.8 m² a tree', '1265 to 1356 lb a tree at 310 ft² a tree'],
  ['at 2-7 degrees C; sealed at 20 degrees C', 'at 36-45 °F; sealed at 68 °F'],
  ['chill at 1 to 5 °C', 'chill at 34 to 41 °F'],
])('"%s" is "%s" where units are those of the US', (text, own) => {
  expect(measuresInWords(text, 'us')).toBe(own)
  expect(measuresInWords(text, 'metric')).toBe(text)
})

test('"42 lb from a tree at 25 ft" is turned the other way', () => {
  const text = '8 bushels of 42 lb from a tree at 25 ft'
  expect(measuresInWords(text, 'metric')).toBe('8 bushels of 19 kg from a tree at 7.6 m')
  expect(measuresInWords(text, 'us')).toBe(text)
})

test.each([
  '25 mg in 10 g lanolin',
  '7 in summer, 14-18 in winter',
  '4 g/L IBA',
  'Myrobalan 29C',
  'months 3-5, 12 methods',
  'a density of 3 kg/m³',
])('"%s" stays as it is: a recipe, a name, no measure', text => {
  expect(measuresInWords(text, 'us')).toBe(text)
  expect(measuresInWords(text, 'metric')).toBe(text)
})
