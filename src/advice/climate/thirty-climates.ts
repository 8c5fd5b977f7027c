import type { ClimateSaid } from './climate.ts'

const usual = (coldestNight: number, coldestMonth: number, warmestMonth: number): ClimateSaid => ({
  kind: 'normals',
  coldestNightCelsius: coldestNight,
  coldestInTenYearsCelsius: null,
  coldestMonthCelsius: coldestMonth,
  warmestMonthCelsius: warmestMonth,
})

/** Thirty climates from the equator to the far north, invented: five colds by three summers, twice by place alone. */
export const thirtyClimates: readonly ClimateSaid[] = [
  ...[18, 6, -2, -10, -26].flatMap(night =>
    [16, 21, 27].map(summer =>
      usual(night, Math.min(summer - 1, night + 10 - Math.min(0, night) / 4), Math.max(summer, night + 6)),
    ),
  ),
  ...[0, 15, 28, 40, 52].flatMap(latitude =>
    (['near', 'some way off', 'far'] as const).map(
      (sea, place): ClimateSaid => ({ kind: 'place', latitude, heightMetres: 400 * place, sea }),
    ),
  ),
]
