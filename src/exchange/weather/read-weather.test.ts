import { describe, expect, test } from 'vitest'
import { readWeather } from './read-weather.ts'

const bytes = (text: string) => new TextEncoder().encode(text)
const read = (text: string) => readWeather(bytes(text), '2026-11-26')
const days = (text: string) => {
  const found = read(text)
  if (found.kind === 'refused') expect.fail(`${found.what} ${found.mend}`)
  return found.days.map(({ day, minCelsius, maxCelsius }) => [
    day,
    Number(minCelsius.toFixed(2)),
    Number(maxCelsius.toFixed(2)),
  ])
}
const wanted = [
  ['2015-01-13', -2.5, 4],
  ['2015-01-14', 0.5, 7.1],
]

describe('the same two days are read however they are written', () => {
  test.each([
    ['commas and ISO dates', 'date,tmin,tmax\n2015-01-13,-2.5,4\n2015-01-14,0.5,7.1\n'],
    [
      'a byte order mark, semicolons, decimal commas',
      '\uFEFFDatum;Min. Temperatur (°C);Max. Temperatur (°C)\n13.01.2015;-2,5;4,0\n14.01.2015;0,5;7,1\n',
    ],
    [
      'tabs, day first, maximum first',
      'Fecha\tT. máx.\tT. mín.\n13/01/2015\t4\t-2.5\n14/01/2015\t7.1\t0.5\n',
    ],
    ['month first', 'Date,Min,Max\n01/13/2015,-2.5,4\n01/14/2015,0.5,7.1\n'],
    [
      'month names and two-digit years',
      '"STATION_NUMBER","DAY","TEMPERATURE_MIN","TEMPERATURE_MAX"\n8443,13-JAN-15,-2.5,4\n8443,14-JAN-15,0.5,7.1\n',
    ],
    [
      'three columns',
      '"Year","Month","Day","Tmin","Tmax","Tmean"\n2015,1,13,-2.5,4,1\n2015,1,14,0.5,7.1,3\n',
    ],
    [
      'lines of explanation and dates without strokes',
      "## Site\nStation = 'somewhere'\n## Daily\nDAY,IRRAD,TMIN,TMAX\n20150113,NaN,-2.5,4\n20150114,3,0.5,7.1\n",
    ],
    [
      'tenths of a degree',
      'TN = minimum (in 0.1 degrees Celsius)\nYYYYMMDD,TN,TX\n20150113,-25,40\n20150114,5,71\n',
    ],
    [
      'degrees Fahrenheit by its header',
      'date,min temp (°F),max temp (°F)\n2015-01-13,27.5,39.2\n2015-01-14,32.9,44.78\n',
    ],
    ['no header at all', '2015-01-13 00:00,-2.5,4\n2015-01-14 00:00,0.5,7.1\n'],
  ])('%s', (_, text) => expect(days(text)).toEqual(wanted))
})

test('degrees Fahrenheit without a word of it are told by a summer that no place has in Celsius', () => {
  const text = `date,tmin,tmax\n${Array.from({ length: 9 }, (_, i) => `2015-07-0${i + 1},60,86`).join('\n')}`
  const found = read(text)
  expect(days(text)[0]).toEqual(['2015-07-01', 15.56, 30])
  expect(found.kind === 'read' && found.noted.join()).toMatch(/Fahrenheit/)
})

test('missing values, signs for them, and days turned upside down are left out and counted', () => {
  const found = read(
    'date,tmin,tmax\n2015-01-13,NA,4\n2015-01-14,-999,7\n2015-01-15,8,2\n2015-01-16,1,5\n2015-01-16,2,6\n',
  )
  expect(found).toMatchObject({ kind: 'read', days: [{ day: '2015-01-16', minCelsius: 2 }] })
  expect(found.kind === 'read' && found.noted.join()).toMatch(/^3 lines.*1 days stand in it twice/)
})

test('what cannot be told is refused with what to do about it', () => {
  expect(read('date,tmin,tmax\n03/04/2015,1,5\n05/06/2015,2,6\n')).toMatchObject({
    kind: 'refused',
    what: expect.stringContaining('day or the month'),
  })
  expect(read('name,colour\nfig,green\n')).toMatchObject({
    kind: 'refused',
    mend: expect.stringContaining('date,tmin,tmax'),
  })
  expect(read('date,tmin,tmax\nsoon,cold,warm\n').kind).toBe('refused')
  expect(read('').kind).toBe('refused')
})
