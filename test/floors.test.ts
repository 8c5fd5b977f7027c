import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { cruise, type IConfiguration, type ICruiseResult } from 'dependency-cruiser'
import { expect, test } from 'vitest'
import { root } from './source-files.ts'

const config = createRequire(import.meta.url)('../.dependency-cruiser.cjs') as Required<IConfiguration>

/** Every import below src that breaks a rule of the house, as "rule: from -> to". */
async function brokenRules(baseDir: string): Promise<string[]> {
  const { output } = await cruise(
    ['src'],
    { ...config.options, baseDir, validate: true, ruleSet: { forbidden: config.forbidden } },
    config.options.enhancedResolveOptions,
  )
  return (output as ICruiseResult).summary.violations
    .map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`)
    .sort()
}

/** The broken rules of a small house, made for the question from files and their text. */
async function brokenRulesOf(files: Record<string, string>): Promise<string[]> {
  const house = mkdtempSync(join(tmpdir(), 'small-house-'))
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(house, path)), { recursive: true })
      writeFileSync(join(house, path), text)
    }
    return await brokenRules(house)
  } finally {
    rmSync(house, { recursive: true })
  }
}

const rooms = readdirSync(join(root, 'src'), { withFileTypes: true }).filter(item => item.isDirectory())

test('no import breaks a rule of the house', async () => {
  expect(await brokenRules(root)).toEqual([])
})

test.each(rooms.map(room => room.name))('src/%s stands on a floor of the house', name => {
  expect(config.forbidden.map(rule => rule.name)).toContain(`${name}-knows-only-the-floors-below`)
})

const roomsOthersUse = rooms.map(room => room.name).filter(name => name !== 'app' && name !== 'cli')

test.each(roomsOthersUse)('src/%s has a door, which lists each name by hand', name => {
  const door = join(root, 'src', name, 'index.ts')
  expect(existsSync(door)).toBe(true)
  expect(readFileSync(door, 'utf8')).not.toContain('export *')
})

test('a room may use what stands below it through the door, and itself as it likes', async () => {
  const files = {
    'src/science/index.ts': 'export { half } from "./half.ts"',
    'src/science/half.ts': 'export const half = 0.5',
    'src/planning/share.ts': 'import { half } from "../science/index.ts"; export const share: number = half',
    'src/planning/share.test.ts':
      'import { half } from "../science/half.ts"; import fs from "node:fs"; half; fs',
  }
  expect(await brokenRulesOf(files)).toEqual([])
})

test.each([
  ['upwards', 'science', 'trade', 'science-knows-only-the-floors-below'],
  ['across', 'planning', 'advice', 'planning-knows-only-the-floors-below'],
  ['upwards from far below', 'record', 'cli', 'record-knows-only-the-floors-below'],
])('an import %s is caught, be it of a type alone', async (_, from, to, rule) => {
  const files = {
    [`src/${from}/own.ts`]: `import type { Thing } from '../${to}/index.ts'\nexport const things: Thing[] = []`,
    [`src/${to}/index.ts`]: 'export interface Thing { readonly name: string }',
  }
  expect(await brokenRulesOf(files)).toEqual([`${rule}: src/${from}/own.ts -> src/${to}/index.ts`])
})

test('an import past the door of a room is caught', async () => {
  const files = {
    'src/planning/share.ts': 'import { half } from "../science/half.ts"; export const share = half',
    'src/science/half.ts': 'export const half = 0.5',
  }
  expect(await brokenRulesOf(files)).toEqual([
    'rooms-have-one-door: src/planning/share.ts -> src/science/half.ts',
  ])
})

test('an import in a file with markup is caught like any other', async () => {
  const files = {
    'src/app/screen.tsx':
      'import type { App } from "../server/index.ts"; export const Screen = (_: App) => <p>{"<"}</p>',
    'src/server/index.ts': 'export interface App { readonly name: string }',
  }
  expect(await brokenRulesOf(files)).toEqual([
    'app-knows-only-the-floors-below: src/app/screen.tsx -> src/server/index.ts',
  ])
})

test('a pure room that reaches for the machine is caught', async () => {
  const files = { 'src/record/save.ts': 'import { writeFileSync } from "node:fs"; writeFileSync("a", "b")' }
  expect(await brokenRulesOf(files)).toEqual(['pure-rooms-touch-no-machine: src/record/save.ts -> fs'])
})

test('a program that needs its tests is caught', async () => {
  const files = {
    'src/trade/kind.ts': 'import { sample } from "../../test/sample.ts"; export const kind = sample',
    'test/sample.ts': 'export const sample = 1',
  }
  expect(await brokenRulesOf(files)).toEqual([
    'the-program-stands-without-its-tools: src/trade/kind.ts -> test/sample.ts',
  ])
})

test('simulated seasons that reach a rule of the linear model, be it through what both read, are caught', async () => {
  const files = {
    'src/planning/simulate/run.ts': 'import { weeks } from "../reading/weeks.ts"; export const run = weeks',
    'src/planning/reading/weeks.ts': 'import { space } from "../rules/space.ts"; export const weeks = space',
    'src/planning/rules/space.ts': 'export const space = 1',
  }
  expect(await brokenRulesOf(files)).toEqual([
    'simulator-shares-nothing-with-the-model: src/planning/simulate/run.ts -> src/planning/rules/space.ts',
  ])
})

test('two files that import each other are caught', async () => {
  const files = {
    'src/trade/kind.ts': 'import { step } from "./step.ts"; export const kind = () => step',
    'src/trade/step.ts': 'import { kind } from "./kind.ts"; export const step = () => kind',
  }
  expect(await brokenRulesOf(files)).toContain('no-circles: src/trade/kind.ts -> src/trade/step.ts')
})
