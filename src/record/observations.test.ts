import { describe, expect, test } from 'vitest'
import { EntryId } from '../trade/index.ts'
import { exampleRegisters } from './example-registers.ts'
import { foldEntries } from './fold/fold.ts'
import { readHistory } from './history.ts'
import { observations } from './observations.ts'

/** Rows as `step survived/entered`, with a plus where plants still stand. */
const rows = (history: string): string[] =>
  observations(foldEntries([...exampleRegisters, ...readHistory(history)])).map(
    ({ batch, step, survived, entered, closed }) =>
      `${batch} ${step} ${survived}/${entered}${closed ? '' : '+'}`,
  )

describe('a step teaches', () => {
  const cases: readonly (readonly [why: string, history: string, rows: string[]])[] = [
    [
      'when every plant has left it or died',
      'B1[100] -20† »80 »80 ■80',
      ['B1 mist 80/100', 'B1 weaning 80/80', 'B1 growing on 80/80'],
    ],
    ['when all plants in it were counted and few are undecided', 'B1[100] ✓80†15?5', ['B1 mist 80/95+']],
    ['when all died', 'B1[100] -100†', ['B1 mist 0/100']],
    ['with a missing plant as one that did not survive', 'B1[100] ✓90†5?0 »90', ['B1 mist 90/100']],
    ['with a plant found as one more that entered', 'B1[100] ✓95†8?0 »95', ['B1 mist 95/103']],
    [
      'in one row for plants split off in mid-step',
      'B1[100] -10† -45→B2 »45 B2: -5† »40',
      ['B1 mist 85/100'],
    ],
    ['in one row for plants joined in mid-step', 'B1[100] B2[20] -20⇢B1 B1: -30† »90', ['B1 mist 90/120']],
  ]
  test.each(cases)('%s: %s', (_, history, expected) => {
    expect(rows(history)).toEqual(expect.arrayContaining(expected))
  })
})

describe('a step does not teach', () => {
  const cases: readonly (readonly [why: string, history: string, step: string])[] = [
    ['before anyone has counted', 'B1[100]', 'mist'],
    ['while many are not yet to tell', 'B1[100] ✓50†10?40', 'mist'],
    ['when more than a tenth was mended', 'B1[100] ✓60†5?0 »60', 'mist'],
    ['when more than a tenth came without its being said', 'B1[100] »80 »100', 'weaning'],
    ['when it is in no protocol that is written down', 'B1[100] -5† »95', 'not known'],
  ]
  test.each(cases)('%s: %s', (_, history, step) => {
    expect(rows(history).filter(row => row.startsWith(`B1 ${step}`))).toEqual([])
  })
})

test('a row says when, where, of what, and by which mother', () => {
  const [row] = observations(
    foldEntries([...exampleRegisters, ...readHistory('B1[100 of M1] @100:mist-1 -20† »80')]),
  )
  expect(row).toEqual({
    protocol: 'cuttings',
    protocolVersion: 1,
    method: 'softwood_cutting',
    step: 'mist',
    species: 'apple',
    kind: 'tree',
    cultivar: 'Amber Russet',
    rootstock: null,
    month: 1,
    year: 2026,
    grafter: null,
    bench: null,
    mother: 'M1',
    batch: 'B1',
    entered: 100,
    survived: 80,
    closed: true,
  })
})

test('what was dispatched or worked on counts as having left its step alive', () => {
  expect(rows('B1[50] »50 »50 ■50 B2[50 on B1]')).toContain('B1 growing on 50/50')
})

describe('a row follows the protocol', () => {
  const versionOf = (changedOn: Readonly<Record<number, string>>) => {
    const entries = exampleRegisters.flatMap(entry => {
      const { body } = entry
      if (body.kind !== 'protocol-set/1' || body.protocol.id !== 'cuttings') return [entry]
      return Object.entries(changedOn).map(([version, on]) => ({
        ...entry,
        id: EntryId.parse(version + entry.id.slice(1)),
        on,
        body: { ...body, protocol: { ...body.protocol, version: Number(version) } },
      }))
    })
    const [row] = observations(foldEntries([...entries, ...readHistory('B1[100] -20† »80')]))
    return row?.protocolVersion
  }

  test('as it stood when its batch was begun', () => {
    expect(versionOf({ 4: '2025-06-01', 5: '2026-01-01', 6: '2026-01-02' })).toBe(5)
  })
  test('as first written down, where its batch was begun before that', () => {
    expect(versionOf({ 2: '2026-02-01', 3: '2026-03-01' })).toBe(2)
  })
})
