import type { NurseryMemory } from './nursery-memory.ts'
import type { PlanJobs } from './plan-jobs.ts'
import type { RateLooks, Watched } from './rate-looks.ts'
import type { UnderWay } from './under-way.ts'
import type { WhatIfs } from './what-ifs.ts'

/** What the routes stand on. The clock comes in here and nowhere else. */
export interface Served {
  readonly memory: NurseryMemory
  readonly plans: PlanJobs
  readonly whatIfs: WhatIfs
  readonly rateLooks: RateLooks
  readonly underWay: UnderWay
  /** The nursery's local date. */
  readonly today: () => string
  /** This instant, ISO 8601 in UTC. */
  readonly now: () => string
  readonly newId: () => string
  /** Writes the nursery as a backup, beside everything else. */
  readonly writeBackup: (file: string, watched: Watched) => Promise<void>
  /**
   * Puts a backup in the place of the nursery, which is kept as a backup itself first: how many entries there are now.
   * Throws `LogTrouble` where the file is no whole backup; then all is as it was.
   */
  readonly putBack: (file: string, keptAs: string, watched: Watched) => Promise<number>
  /** Keeps the nursery as a backup, and goes on with an empty one. */
  readonly putAside: (keptAs: string, watched: Watched) => Promise<void>
  /** Fills the nursery, which is empty, with the invented one, and begins to plan it. */
  readonly invent: () => void
}
