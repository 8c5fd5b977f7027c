import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { outsideChecks as planningChecks } from '../src/planning/outside-checks/index.ts'
import { type Fixture, type OutsideCheck, sourceOf } from '../src/science/index.ts'
import { outsideChecks as scienceChecks } from '../src/science/outside-checks/index.ts'
import { root, sourceFiles } from './source-files.ts'

/**
 * Every check against something outside the project, room by room.
 *
 * To add a room's checks: write `src/<room>/outside-checks/index.ts` that exports
 * `outsideChecks = (): readonly OutsideCheck[]` (or a promise of them), with the expected values in `src/<room>/fixtures/*.json` (source, basis
 * and tolerance beside each value) and each check made by `outsideCheck({ what, source, basis, expected, got,
 * tolerance })` from `science/`; then add one line below. A fixture in the form of science's own (`sources`, `cases`
 * with `id`, `inputs`, `expected`, `basis`, `note`) is read by `casesOf(fixture, 'beginning of id')`.
 * Within science: one file a subject in `src/science/outside-checks/`, listed in its index.
 */
const rooms: Readonly<Record<string, () => readonly OutsideCheck[] | Promise<readonly OutsideCheck[]>>> = {
  science: scienceChecks,
  planning: planningChecks,
}

export const allOutsideChecks = async (): Promise<readonly OutsideCheck[]> => {
  const byRoom: (readonly OutsideCheck[])[] = []
  for (const checks of Object.values(rooms)) byRoom.push(await checks())
  return byRoom.flat()
}

/** One file of expected values: how many cases it has, how firm they are, and which of them no check uses. */
export interface CasesOfFixture {
  readonly file: string
  readonly title: string
  readonly cases: number
  readonly published: number
  readonly recomputed: number
  readonly fromMemory: number
  readonly unused: readonly string[]
}

/** Every case that stands in the project beside the checks that use it. */
export const casesByFixture = (checks: readonly OutsideCheck[]): readonly CasesOfFixture[] =>
  sourceFiles('src/')
    .filter(path => /^src\/[a-z]+\/fixtures\/[^/]+\.json$/.test(path))
    .sort()
    .flatMap(path => {
      const fixture = JSON.parse(readFileSync(root + path, 'utf8')) as Partial<Fixture>
      if (fixture.cases === undefined) return []
      const { title, cases } = fixture as Fixture
      const withBasis = (begins: string) => cases.filter(({ basis }) => basis.startsWith(begins)).length
      const isUsed = (known: Fixture['cases'][number]) =>
        checks.some(
          ({ what, source }) =>
            what.endsWith(`(${known.id})`) && source === sourceOf(fixture as Fixture, known),
        )
      return [
        {
          file: basename(path, '.json'),
          title,
          cases: cases.length,
          published: withBasis('published'),
          recomputed: withBasis('recomputed'),
          fromMemory: withBasis('from memory'),
          unused: cases.filter(known => !isUsed(known)).map(({ id }) => id),
        },
      ]
    })
