import { expect, test } from 'vitest'
import { allSpecies, type Species, wayOf } from '../trade/facts/index.ts'
import type { Answer, WayAnswer } from './answer.ts'
import type { ClimateSaid } from './climate/climate.ts'
import { thirtyClimates } from './climate/thirty-climates.ts'
import { Question } from './question.ts'
import { whichTree } from './which-tree.ts'

const ask = (species: Species, more: Record<string, unknown> = {}): Answer =>
  whichTree(Question.parse({ species: species.id, climate: kind(species), ...more }), species, 40)

/** A place where the fruit is at home: no cold that harms it, chill enough, summer warm enough. Invented. */
const kind = (species: Species): ClimateSaid => {
  const [climate] = species.climates
  const chill = species.orchard.chillHours?.typical ?? 0
  const [night, coldest, warmest] =
    climate === 'tropical'
      ? [15, 21, 28]
      : chill > 200
        ? [-3, 5, 25]
        : climate === 'temperate'
          ? [-4, 4, 24]
          : [4, 13, 27]
  return {
    kind: 'normals',
    coldestNightCelsius: night!,
    coldestInTenYearsCelsius: null,
    coldestMonthCelsius: coldest!,
    warmestMonthCelsius: warmest!,
  }
}

const of = (answer: Answer, form: string): WayAnswer[] => answer.ways.filter(({ way }) => way.form === form)
const isShare = (value: number) => value >= 0 && value <= 1

test('every fruit in every one of thirty climates gets a whole, finite, sensible answer', () => {
  let asked = 0
  for (const species of allSpecies())
    for (const climate of thirtyClimates) {
      asked += 1
      const answer = whichTree(
        Question.parse({ species: species.id, climate, wouldRework: true }),
        species,
        20,
      )
      const where = `${species.id}, ${JSON.stringify(climate)}`
      expect(answer.ways.length, where).toBeGreaterThan(0)
      for (const { way, ...rest } of answer.ways) {
        const at = `${where}, ${way.id}`
        expect(rest.stand.trees, at).toBeGreaterThan(0)
        for (const share of [
          ...rest.fruitBy,
          ...rest.standing,
          rest.trueShare,
          rest.survives,
          rest.paysBackShare,
        ])
          if (!isShare(share)) expect.fail(`${at}: ${share} is no share`)
        for (const value of [
          rest.spend,
          rest.presentValue.mean,
          rest.equivalentYearlyValue,
          ...rest.cropSoFar.mean,
        ])
          if (!Number.isFinite(value)) expect.fail(`${at}: ${value} is not finite`)
        for (let year = 1; year <= answer.years; year++) {
          if (rest.cropSoFar.mean[year]! < rest.cropSoFar.mean[year - 1]!)
            expect.fail(`${at}: crop so far falls`)
          if (rest.standing[year]! > rest.standing[year - 1]! + 1e-12) expect.fail(`${at}: the dead rise`)
          if (rest.cropSoFar.low[year]! > rest.cropSoFar.high[year]!) expect.fail(`${at}: band upside down`)
        }
        expect(rest.firstFruit.low, at).toBeLessThanOrEqual(rest.firstFruit.middle)
      }
      for (const wish of Object.values(answer.best))
        expect(wish === null || answer.ways.some(({ way }) => way.id === wish), where).toBe(true)
      const { beaten } = answer
      expect(beaten.length, where).toBeLessThan(answer.ways.length)
    }
  expect(asked).toBe(40 * 30)
})

test('the same question has the same answer, and each assumption says where it comes from', () => {
  for (const species of allSpecies()) {
    expect(ask(species)).toEqual(ask(species))
    for (const { figure, key } of ask(species).assumptions) {
      expect(figure.basis, key).toBeTruthy()
      if (figure.basis === 'published')
        expect(figure.sources.length, `${species.id} ${key}`).toBeGreaterThan(0)
      expect(figure.low <= figure.typical && figure.typical <= figure.high, `${species.id} ${key}`).toBe(true)
    }
  }
})

/** Fruits whose seedlings bear as soon as any other plant: vines that are sown each few years. */
const quickFromSeed = ['passionfruit', 'coffee']

test('layered and grafted trees fruit years before seedlings (common practice, no source)', () => {
  for (const species of allSpecies()) {
    if (quickFromSeed.includes(species.id)) continue
    const answer = ask(species, { wanted: 'any', amount: { kind: 'trees', trees: 200 }, yearsAhead: 30 })
    const [seedling] = of(answer, 'seedling')
    if (seedling === undefined) continue
    for (const way of [...of(answer, 'layered'), ...of(answer, 'worked')])
      if (way.way.rootstock?.id !== 'vigorous')
        expect(way.firstFruit.middle, `${species.id} ${way.way.id}`).toBeLessThan(
          seedling.firstFruit.middle - 0.4,
        )
  }
})

test('a tree in a container stays smaller and bears less than in the ground (common practice, no source)', () => {
  for (const species of allSpecies()) {
    const ground = ask(species)
    const pot = ask(species, { ground: { kind: 'container', litres: 60 } })
    for (const { way, stand, crop } of pot.ways) {
      const free = ground.ways.find(other => other.way.id === way.id)!
      expect(stand.heightMetres, `${species.id} ${way.id}`).toBeLessThan(free.stand.heightMetres)
      expect(stand.canopyEach, `${species.id} ${way.id}`).toBeLessThan(free.stand.canopyEach)
      expect(crop.at(-1)!, `${species.id} ${way.id}`).toBeLessThanOrEqual(free.crop.at(-1)! + 1e-9)
    }
  }
})

test('a larger container never bears less', () => {
  for (const species of allSpecies()) {
    const crops = [20, 60, 200].map(
      litres => ask(species, { ground: { kind: 'container', litres } }).ways[0]!.cropSoFar.mean.at(-1)!,
    )
    expect(crops[0]!, species.id).toBeLessThanOrEqual(crops[1]! + 1e-9)
    expect(crops[1]!, species.id).toBeLessThanOrEqual(crops[2]! + 1e-9)
  }
})

test('seedlings are the cheapest tree (common practice, no source)', () => {
  for (const species of allSpecies()) {
    const answer = ask(species)
    const [seedling] = of(answer, 'seedling')
    if (seedling === undefined) continue
    for (const way of answer.ways)
      if (way.way.form !== 'seedling' && way.way.form !== 'reworked')
        expect(way.price, `${species.id} ${way.way.id}`).toBeGreaterThan(seedling.price)
  }
})

test('parts of a tree are true to it; a seedling is at best mostly so', () => {
  for (const species of allSpecies())
    for (const { way, trueShare } of ask(species, { amount: { kind: 'trees', trees: 500 } }).ways) {
      if (way.form === 'multi-worked') expect(trueShare).toBe(0.5)
      else if (!way.fromSeed) expect(trueShare, `${species.id} ${way.id}`).toBe(1)
      else if (way.form === 'seedling') expect(trueShare, species.id).toBeLessThan(0.96)
    }
})

test('a colder place never lets more trees live, whatever the way', () => {
  for (const species of allSpecies()) {
    const at = (shift: number) => {
      const climate = kind(species) as ClimateSaid & { kind: 'normals' }
      return ask(species, {
        climate: { ...climate, coldestNightCelsius: climate.coldestNightCelsius + shift },
      }).ways
    }
    const here = at(0)
    const colder = at(-6)
    here.forEach((way, i) => {
      expect(colder[i]!.survives, `${species.id} ${way.way.id}`).toBeLessThanOrEqual(way.survives + 1e-12)
    })
  }
})

test('killed to the ground, a tree on its own roots comes again true and a worked one is lost', () => {
  const lemon = allSpecies().find(({ id }) => id === 'lemon')!
  const frosty = { kind: 'normals', coldestNightCelsius: -2, coldestMonthCelsius: 9, warmestMonthCelsius: 25 }
  const answer = ask(lemon, { climate: frosty })
  const [layered] = of(answer, 'layered')
  for (const worked of of(answer, 'worked')) expect(worked.survives).toBeLessThan(layered!.survives)
})

test('a tree on a weaker stock is smaller, and more of them fit', () => {
  const apple = allSpecies().find(({ id }) => id === 'apple')!
  const [dwarf, half, whole] = of(ask(apple, { amount: { kind: 'area', squareMetres: 600 } }), 'worked')
  expect(dwarf!.stand.heightMetres).toBeLessThan(half!.stand.heightMetres)
  expect(half!.stand.heightMetres).toBeLessThan(whole!.stand.heightMetres)
  expect(dwarf!.stand.trees).toBeGreaterThan(half!.stand.trees)
  expect(half!.stand.trees).toBeGreaterThan(whole!.stand.trees)
})

test('a female without a male bears nothing; with one planted too she does, and he is paid for', () => {
  const kiwi = allSpecies().find(({ id }) => id === 'kiwifruit')!
  const alone = ask(kiwi, { partner: 'none' })
  const both = ask(kiwi, { partner: 'planted too' })
  const near = ask(kiwi, { partner: 'near' })
  const fruit = (answer: Answer) => of(answer, 'cutting-grown')[0]!.cropSoFar.mean.at(-1)!
  expect(fruit(alone)).toBeLessThan(0.02 * fruit(both))
  expect(of(both, 'cutting-grown')[0]!.stand.partners).toBe(1)
  expect(of(both, 'cutting-grown')[0]!.spend).toBeGreaterThan(of(near, 'cutting-grown')[0]!.spend)
})

test('every way compared is one that the facts know for the fruit', () => {
  for (const species of allSpecies())
    for (const { way } of ask(species, { wouldRework: true }).ways)
      expect(wayOf(species, way.method), `${species.id} ${way.id}`).toBeDefined()
})

test('for more good seedlings more are planted, by the binomial: 22 for one and 38 for two at one in ten', () => {
  // 1 − 0.9^22 = 0.902 and 1 − 0.9^21 = 0.891; P(at least 2 of 38) = 0.905, of 37 = 0.896. By hand.
  const apple = allSpecies().find(({ id }) => id === 'apple')!
  const plant = (trees: number) =>
    of(
      ask(apple, { wanted: 'any', amount: { kind: 'trees', trees }, set: { worthKeepingShare: 0.1 } }),
      'seedling',
    )[0]!.seedlingsForGood
  expect(plant(1)).toEqual({ good: 1, plant: 22 })
  expect(plant(2)).toEqual({ good: 2, plant: 38 })
})

test('half are lost by the first year in which fewer than half still stand, and never where more do', () => {
  for (const species of allSpecies())
    for (const climate of thirtyClimates.slice(6, 14))
      for (const { standing, halfLostBy, way } of ask(species, { climate }).ways) {
        if (halfLostBy === null)
          expect(
            standing.slice(1).every(share => share >= 0.5),
            way.id,
          ).toBe(true)
        else {
          expect(standing[halfLostBy]!, `${species.id} ${way.id}`).toBeLessThan(0.5)
          expect(standing[halfLostBy - 1]!, `${species.id} ${way.id}`).toBeGreaterThanOrEqual(0.5)
        }
      }
})
