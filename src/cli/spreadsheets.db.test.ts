import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import Papa from 'papaparse'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { BUILT, runCommand } from '../../test/real-server.ts'

const fixtures = fileURLToPath(new URL('../exchange/fixtures/', import.meta.url))
const today = ['--today', '2026-11-24']

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'budstick-cli-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const at = (name: string) => join(folder, name)

/** The command as a person runs it: another process, told apart by what it prints where. */
const budstick = async (...args: string[]) => {
  const { code, data, said } = await runCommand(BUILT, args)
  return { code, out: data, said }
}

test('from a folder of spreadsheets to the starts of the season', async () => {
  const data = ['--data', at('german')]
  const looked = await budstick('read', join(fixtures, 'german'), ...data, ...today)
  expect([looked.code, looked.said]).toEqual([0, ''])
  expect(looked.out).toMatch(/Bestellungen.csv: Orders \(Windows-1252, semicolons/)
  expect(readdirSync(folder)).toEqual([])

  const accepted = await budstick('read', join(fixtures, 'german'), ...data, ...today, '--accept')
  expect(accepted.code).toBe(0)
  expect(accepted.said).toMatch(/^\d+ entries written into /)

  const planned = await budstick('plan', ...data, ...today, '--as', 'csv', '--seasons', '100', '--quiet')
  expect([planned.code, planned.said]).toEqual([0, ''])
  const rows = Papa.parse<Record<string, string>>(planned.out.trimEnd(), { header: true }).data
  const figs = rows.filter(({ kind }) => kind === 'fig-brown-pilgrim')
  const apples = rows.filter(({ kind }) => kind === 'apple-evening-bell-on-layer-nine')
  // More must be stuck than are sold: 1250 figs less the 210 that stand there, 300 apples.
  const sum = (starts: typeof rows) => starts.reduce((all, { number }) => all + Number(number), 0)
  expect(sum(figs)).toBeGreaterThan(1040)
  expect(sum(apples)).toBeGreaterThan(300)
  for (const { week, from } of figs)
    expect([week! >= '2026-W48' && week! <= '2028-W09', from]).toEqual([
      true,
      expect.stringMatching(/^M1 \d+/),
    ])
  expect((await budstick('verify', ...data)).code).toBe(0)
})

test('the record out into a folder and in again: the same entries, and nothing twice', async () => {
  const out = at('package')
  expect((await budstick('export', out, '--data', at('german'))).code).toBe(0)
  expect(readdirSync(out)).toContain('datapackage.json')
  const first = await budstick('import', out, '--data', at('again'))
  expect([first.code, first.said]).toEqual([0, expect.stringMatching(/^[1-9]\d* entries taken in, 0 were/)])
  expect((await budstick('import', out, '--data', at('again'))).said).toMatch(/^0 entries taken in, [1-9]/)
  expect((await budstick('export', at('package 2'), '--data', at('again'))).code).toBe(0)
  for (const name of readdirSync(out).filter(file => file !== 'datapackage.json'))
    expect(readFileSync(join(at('package 2'), name), 'utf8'), name).toBe(
      readFileSync(join(out, name), 'utf8'),
    )
})

test('an order of days that no one can know stops the writing until the map says it', async () => {
  const file = join(fixtures, 'american', 'orders-unclear.csv')
  const data = ['--data', at('american')]
  const stopped = await budstick('read', file, ...data, ...today, '--accept')
  expect([stopped.code, stopped.said]).toEqual([1, expect.stringMatching(/^Nothing is written/)])
  expect(stopped.out).toMatch(/Does the day or the month come first/)
  writeFileSync(
    at('map.json'),
    JSON.stringify({ 'orders-unclear.csv': { answers: { 'days: Date Required': 'month first' } } }),
  )
  const written = await budstick('read', file, ...data, ...today, '--map', at('map.json'), '--accept')
  expect(written.code).toBe(0)
  const remembered = await budstick('read', file, ...data, ...today, '--as', 'json')
  expect(JSON.parse(remembered.out)).toMatchObject({ known: 2, questions: [{ answer: 'month first' }] })
})

test('empty sheets are saved, read as they are, and never written over', async () => {
  const saved = await budstick('sheets', at('sheets'))
  expect([saved.code, readdirSync(at('sheets'))]).toEqual([0, ['nursery.xlsx']])
  expect(await budstick('sheets', at('sheets'))).toMatchObject({
    code: 1,
    said: expect.stringMatching(/is there already/),
  })
  expect((await budstick('sheets', at('sheets'), '--as', 'csv')).code).toBe(0)
  expect(readdirSync(at('sheets'))).toContain('orders.csv')
})

test('asked wrongly, a command ends with 2, and with 1 where it could not be done; either way it prints no data', async () => {
  const asked: readonly (readonly [string[], number, RegExp])[] = [
    [['read'], 2, /Say which folder/],
    [['read', '.', '--as', 'pdf'], 2, /--as takes text or json/],
    [['import', 'nowhere'], 1, /There is no/],
  ]
  const ran = await Promise.all(asked.map(([args]) => budstick(...args)))
  for (const [nth, [, code, said]] of asked.entries())
    expect(ran[nth]).toEqual({ code, out: '', said: expect.stringMatching(said) })
})

test('a command tells how it is used, with examples', async () => {
  const { code, out, said } = await budstick('read', '--help')
  expect([code, said]).toEqual([0, ''])
  expect(out).toMatch(/budstick read \.\/spreadsheets/)
})
