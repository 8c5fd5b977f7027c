import { makeDemoEntries } from '../demo/index.ts'
import type { NurseryMemory } from './nursery-memory.ts'
import type { Served } from './served.ts'

const KEY = 'invented'
const SEED = 1

/** Tells an empty log the invented nursery, and that it is that one: the mark goes with the log, into backups too. */
export function tellInvented(memory: NurseryMemory, { today, now }: Pick<Served, 'today' | 'now'>): void {
  memory.append(makeDemoEntries({ seed: SEED, today: today() }), now())
  memory.log.remember(KEY, true)
}

export const isInvented = ({ log }: NurseryMemory): boolean => log.recall<boolean>(KEY) === true
