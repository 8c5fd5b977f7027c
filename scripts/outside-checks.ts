/**
 * Prints every check against something outside the project: `npm run outside-checks`, with `--json` for programs.
 * Ends with 1 when one of them fails.
 */
import { parseArgs } from 'node:util'
import type { CheckValue, OutsideCheck } from '../src/science/index.ts'
import { allOutsideChecks, type CasesOfFixture, casesByFixture } from '../test/outside-checks.ts'

const { values } = parseArgs({ options: { json: { type: 'boolean', default: false } } })
const checks = await allOutsideChecks()
const failed = checks.filter(check => !check.pass)

if (values.json) console.log(JSON.stringify(checks, null, 1))
else {
  console.log(table(checks))
  for (const { what, source, basis, expected, got, tolerance } of failed)
    console.log(`\nFAILS: ${what}\n${JSON.stringify({ source, basis, expected, got, tolerance }, null, 1)}`)
  console.log(`\n${countsTable(casesByFixture(checks))}`)
  console.log(`\n${checks.length - failed.length} of ${checks.length} checks pass.`)
}
process.exitCode = failed.length === 0 ? 0 : 1

function table(rows: readonly OutsideCheck[]): string {
  const columns: readonly [string, number, (check: OutsideCheck) => string][] = [
    ['', 5, check => (check.pass ? 'pass' : 'FAILS')],
    ['what', 78, check => check.what],
    ['expected', 24, check => short(check.expected)],
    ['got', 24, check => short(check.got)],
    ['basis', 24, check => check.basis],
    ['source', 60, check => check.source],
  ]
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => fitted(cell, columns[i]?.[1] ?? 10))
      .join('  ')
      .trimEnd()
  return [
    line(columns.map(([head]) => head)),
    ...rows.map(row => line(columns.map(([, , cell]) => cell(row)))),
  ].join('\n')
}

/** Which cases of which table are checked, and how firm they are. */
function countsTable(fixtures: readonly CasesOfFixture[]): string {
  const sum = (of: (fixture: CasesOfFixture) => number) =>
    fixtures.reduce((total, fixture) => total + of(fixture), 0)
  const used = ({ cases, unused }: CasesOfFixture) => cases - unused.length
  const line = (cells: readonly (string | number)[]) =>
    cells
      .map((cell, i) => (i === 0 ? fitted(String(cell), 78) : String(cell).padStart(11)))
      .join('')
      .trimEnd()
  return [
    line(['cases of expected values', 'checked', 'of', 'published', 'recomputed', 'from memory']),
    ...fixtures.map(fixture =>
      line([
        `${fixture.file}: ${fixture.title}`,
        used(fixture),
        fixture.cases,
        fixture.published,
        fixture.recomputed,
        fixture.fromMemory,
      ]),
    ),
    line([
      'all',
      sum(used),
      sum(({ cases }) => cases),
      sum(({ published }) => published),
      sum(({ recomputed }) => recomputed),
      sum(({ fromMemory }) => fromMemory),
    ]),
    ...fixtures
      .filter(({ unused }) => unused.length > 0)
      .map(({ file, unused }) => `Not checked of ${file}: ${unused.join(', ')}`),
  ].join('\n')
}

function fitted(text: string, width: number): string {
  return text.length > width ? `${text.slice(0, width - 1)}…` : text.padEnd(width)
}

function short(value: CheckValue): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(8)))
  if (Array.isArray(value)) return value.map(short).join(' ')
  if (typeof value === 'object' && value !== null) return Object.values(value).map(short).join(' ')
  return String(value)
}
