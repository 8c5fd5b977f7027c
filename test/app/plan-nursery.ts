import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { inject } from 'vitest'
import { createClient } from '../../src/api/index.ts'
import { BUILT, startServer } from '../real-server.ts'
import { localToday, planSeason, smallNursery } from './small-nursery.ts'

/** The folder of the small nursery with its season planned, to be copied: planned once, by the first that asks. */
export async function plannedNursery(): Promise<string> {
  const folder = join(inject('shared'), 'nursery')
  const isPlanned = join(inject('shared'), 'planned')
  if (mkdirSync(folder, { recursive: true }) === undefined) {
    while (!existsSync(isPlanned)) await new Promise(done => setTimeout(done, 100))
    return folder
  }
  const server = await startServer(BUILT, folder, '--empty')
  const client = createClient(server.address)
  await client.pushEntries(smallNursery(localToday()))
  await planSeason(client)
  await server.end()
  writeFileSync(isPlanned, '')
  return folder
}
