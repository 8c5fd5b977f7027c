import { exampleRegisters } from '../src/record/example-registers.ts'
import { type AnyEntry, Body, type Entry } from '../src/record/index.ts'
import { dayNumber, dayText, seededRandom } from '../src/science/index.ts'

/**
 * A long and orderly history for measuring: rootstocks raised, trees grafted on them with wood of sixty mothers,
 * counted, split, moved on, finished and sent out, about twenty entries a batch. Invented; the same for a seed.
 */
export function madeLog(batches: number, seed = 1): AnyEntry[] {
  const dice = seededRandom(seed)
  const below = (n: number) => Math.floor(dice.uniform() * n)
  const entries: Entry[] = [...exampleRegisters]
  let made = 0
  const say = (day: number, body: object) => {
    made += 1
    const hex = made.toString(16).padStart(12, '0')
    const id = `01a00000-0000-7000-8000-${hex}` as Entry['id']
    entries.push({
      id,
      on: dayText(firstDay + day),
      at: null,
      by: null,
      device: 'office',
      body: body as Entry['body'],
    })
  }
  const firstDay = dayNumber('2016-01-04')
  for (let m = 0; m < 60; m++) {
    const mother = { id: `m${m}`, name: `m${m}`, cultivar: 'Amber Russet', gives: [] }
    say(0, Body.parse({ kind: 'mother-set/1', mother }))
  }
  for (let n = 0; n < batches; n++) {
    // Half are rootstocks; a worked batch stands on rootstocks begun a hundred days before it.
    const worked = n % 2 === 1
    const rootstocks = n - 1 - 2 * Math.ceil((batches * 100) / 3650 / 2)
    const batch = `b${n}`
    const began = Math.floor((n / batches) * 3650)
    const number = 100 + below(200)
    const steps = worked ? ['healing', 'growing on'] : ['mist', 'weaning', 'growing on']
    const sources = worked
      ? [
          rootstocks < 0
            ? { from: 'bought', supplier: 'a grower', material: 'rootstocks', number: 60 }
            : { from: 'batch', batch: `b${rootstocks}`, as: 'rootstock', number: 60 },
          { from: 'mother', mother: `m${below(60)}`, material: 'scion sticks', number: 30 },
        ]
      : [{ from: 'mother', mother: `m${below(60)}`, material: 'seed', number }]
    const count = worked ? 60 : number
    say(began, {
      kind: 'batch-started/1',
      batch,
      name: batch,
      kindOfTree: worked ? 'tree' : 'stock',
      protocol: worked ? 'grafting' : 'cuttings',
      number: count,
      sources,
      bench: 'mist-1',
      workedBy: ['p1'],
      candidates: [],
    })
    let alive = count
    let day = began
    for (const [i, step] of steps.entries()) {
      for (let look = 0; look < 3; look++) {
        day += 7
        const dead = below(4)
        alive -= dead
        say(day, { kind: 'counted/1', batch, step, sign: 'rooted', taken: alive - 2, dead, undecided: 2 })
      }
      day += 2
      alive -= 1
      say(day, { kind: 'lost/1', batch, step, number: 1, cause: 'rot' })
      say(day, { kind: 'moved/1', batch, step, number: 10, to: 'mist-2' })
      const to = steps[i + 1]
      if (to) say(day, { kind: 'advanced/1', batch, from: step, to, number: alive, bench: 'shade-1' })
    }
    if (n % 10 === 1) {
      say(day, {
        kind: 'split/1',
        batch,
        step: 'growing on',
        number: 5,
        into: `${batch}-a`,
        name: `${batch}-a`,
        why: '',
      })
      alive -= 5
    }
    for (const mm of [6.1, 7.4])
      say(day, { kind: 'measured/1', batch, step: 'growing on', calipersMm: [mm, mm + 1] })
    say(day + 1, { kind: 'finished/1', batch, number: alive, grade: '' })
    if (worked) say(day + 9, { kind: 'dispatched/1', batch, order: null, number: alive, to: 'a buyer' })
    else say(day + 9, { kind: 'noted/1', about: batch, text: 'ready to work' })
  }
  return entries
}
