import { expect, test } from 'vitest'
import { dayNumber, dayText } from '../../science/index.ts'
import { climateOfDays, type WeatherDay } from './from-days.ts'
import { coldestNightOnceIn, readClimate } from './read-climate.ts'

/** Made days: a cosine through the year with its coldest on a day of the year, and one cold night in each winter. */
const made = (
  from: string,
  to: string,
  coldestDay: number,
  coldNights: Record<string, number>,
): WeatherDay[] => {
  const out: WeatherDay[] = []
  for (let day = dayNumber(from); day <= dayNumber(to); day++) {
    const text = dayText(day)
    const ofYear = day - dayNumber(`${text.slice(0, 4)}-01-01`)
    const mean = 12 - 8 * Math.cos((2 * Math.PI * (ofYear - coldestDay)) / 365.25)
    out.push({ day: text, minCelsius: coldNights[text] ?? mean - 4, maxCelsius: mean + 4 })
  }
  return out
}

const nights = {
  '2011-01-10': -9,
  '2011-12-20': -6,
  '2013-02-02': -7,
  '2014-01-30': -5,
  '2014-12-29': -8,
  '2016-01-18': -11,
}

test('each winter gives its coldest night, and one that lasts over the new year is not cut in two', () => {
  const climate = climateOfDays(made('2010-06-01', '2016-12-31', 15, nights))
  expect(climate).toMatchObject({
    kind: 'climate',
    winters: 6,
    firstDay: '2010-06-01',
    lastDay: '2016-12-31',
  })
  const said = climate.kind === 'climate' && climate.said.kind === 'record' ? climate.said : null
  expect(said?.yearlyMinimaCelsius).toEqual([-9, -6, -7, -5, -8, -11])
})

test('on the southern half the winter lies in the middle of the calendar year', () => {
  const days = made('2010-01-01', '2016-12-31', 197, { '2012-07-20': -3, '2012-08-02': -2, '2013-07-03': -4 })
  const climate = climateOfDays(days)
  const said = climate.kind === 'climate' && climate.said.kind === 'record' ? climate.said : null
  // Winters of 2010 to 2016: the two cold nights of 2012 are one winter's.
  expect(said?.yearlyMinimaCelsius.filter(night => night < -1)).toEqual([-3, -4])
  expect(said!.warmestMonthCelsius).toBeCloseTo(20, 0)
  expect(said!.coldestMonthCelsius).toBeCloseTo(4, 0)
})

test('months are means of the days’ middles, and the adviser reckons with all twelve', () => {
  const climate = climateOfDays(made('2010-06-01', '2016-12-31', 15, {}))
  const said = climate.kind === 'climate' ? climate.said : null
  const read = readClimate(said!)
  expect(read.monthMeansCelsius).toHaveLength(12)
  read.monthMeansCelsius.forEach((mean, month) => {
    const middle = 12 - 8 * Math.cos((2 * Math.PI * (15 + month * 30.44 - 15)) / 365.25)
    expect(Math.abs(mean - middle), `month ${month + 1}`).toBeLessThan(0.5)
  })
})

test('few winters give the usual figures, and less than a year gives nothing', () => {
  const two = climateOfDays(made('2014-06-01', '2016-07-31', 15, nights))
  expect(two).toMatchObject({ winters: 2, said: { kind: 'normals', coldestNightCelsius: -9.5 } })
  if (two.kind === 'climate') expect(coldestNightOnceIn(readClimate(two.said), 2)).toBeCloseTo(-9.5, 6)
  expect(climateOfDays(made('2014-06-01', '2015-04-30', 15, {})).kind).toBe('too short')
  expect(climateOfDays([]).kind).toBe('too short')
})
