import { outsideChecks as planningChecks } from '../src/planning/outside-checks/index.ts'
import type { OutsideCheck } from '../src/science/index.ts'
import { outsideChecks as scienceChecks } from '../src/science/outside-checks/index.ts'

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
