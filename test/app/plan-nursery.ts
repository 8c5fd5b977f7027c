import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { TestProject } from 'vitest/node'
import { createClient } from '../../src/api/index.ts'
import { BUILT, startServer } from '../real-server.ts'
import { localToday, planSeason, smallNursery } from './small-nursery.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** The folder of the small nursery with its season planned, to be copied. */
    plannedNursery: string
  }
}

/** Before the first test in a browser: the season of the small nursery, planned once for all that look at a plan. */
export default async function planNursery(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), 'planned-nursery-'))
  const server = await startServer(BUILT, folder, '--empty')
  const client = createClient(server.address)
  await client.pushEntries(smallNursery(localToday()))
  await planSeason(client)
  await server.end()
  project.provide('plannedNursery', folder)
  return () => rmSync(folder, { recursive: true })
}
