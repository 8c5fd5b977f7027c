import type { Client } from '../../src/api/index.ts'
import { makeDemoEntries } from '../../src/demo/index.ts'
import type { Entry } from '../../src/record/index.ts'

/** A corner of the invented nursery, small enough to be planned in a moment: kinds made from cuttings alone. */
const KINDS = ['fig-green-purse', 'blueberry-harbour-ink', 'olive-silver-stair']

/** The day it is where the tests run, which a browser takes for today. */
export const localToday = (): string => {
  const now = new Date()
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()]
    .map(part => String(part).padStart(2, '0'))
    .join('-')
}

/** Plans the season and waits until the plan is there. */
export async function planSeason(client: Client): Promise<void> {
  await client.startPlan()
  for (;;) {
    const { job } = await client.plan()
    if (job?.state === 'done') return
    if (job?.state === 'failed') throw new Error(`No plan: ${job.why}`)
    await new Promise(done => setTimeout(done, 100))
  }
}

const batchOf = (body: object): string | null =>
  'batch' in body && typeof body.batch === 'string' ? body.batch : null

export const smallNursery = (today: string): Entry[] => {
  const kept = new Set<string>()
  const ids = new Set<string>()
  return makeDemoEntries({ seed: 1, today }).filter(entry => {
    const keep = wanted(entry, kept, ids)
    if (keep) ids.add(entry.id)
    return keep
  })
}

/** Registers of what is kept, its batches and its orders; entries about anything else are left out. */
const wanted = ({ body }: Entry, batches: Set<string>, entries: ReadonlySet<string>): boolean => {
  switch (body.kind) {
    case 'kind-set/1':
      return KINDS.includes(body.kindOfTree.id)
    case 'order-placed/1':
    case 'order-changed/1':
      return KINDS.includes(body.order.kind)
    case 'batch-started/1': {
      if (!KINDS.includes(body.kindOfTree)) return false
      batches.add(body.batch)
      return true
    }
    case 'struck/1':
      return entries.has(body.entry)
    case 'protocol-set/1':
    case 'site-set/1':
    case 'prices-set/1':
    case 'bench-set/1':
    case 'person-set/1':
    case 'cultivar-set/1':
    case 'mother-set/1':
      return true
    default: {
      const batch = batchOf(body)
      return batch !== null && batches.has(batch)
    }
  }
}
