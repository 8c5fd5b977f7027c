/** What is timed of a method, apart from the days of the seed: name and unit of each. */
export const timingByKey = {
  daysAfterSeveringToEstablished: { name: 'from cutting off to established', unit: 'days' },
  daysToBudBreak: { name: 'until buds break', unit: 'days' },
  daysToCallus: { name: 'until callus', unit: 'days' },
  daysToPot: { name: 'until potting', unit: 'days' },
  daysToRoot: { name: 'until roots', unit: 'days' },
  daysToShoot: { name: 'until it shoots', unit: 'days' },
  daysToUnion: { name: 'until united', unit: 'days' },
  daysToUnwrap: { name: 'until the wrap comes off', unit: 'days' },
  etiolatedShootMm: { name: 'shoot grown in the dark', unit: 'mm' },
  etiolationCelsius: { name: 'warmth in the dark', unit: '°C' },
  leadTimeOrderMonths: { name: 'ordered ahead', unit: 'months' },
  minutesPerBud: { name: 'work for a bud', unit: 'minutes' },
  monthsGreenhouse: { name: 'in the house', unit: 'months' },
  monthsToSaleable: { name: 'from the act of the hands to saleable', unit: 'months' },
  stockAgeDays: { name: 'age of the stock', unit: 'days' },
  yearsToFullBedYield: { name: 'until the bed is in full yield', unit: 'years' },
} as const

export type TimingKey = keyof typeof timingByKey
