import { Refused, type TaskDeed } from '../../api/index.ts'
import { client } from './client.ts'
import { keptViews } from './device-store.ts'

const KEPT = '["deeds"]'
/** Of so many done tasks of a week the deeds are held ready. */
const MOST = 200

/** Holds ready what was said when these tasks were done, so that it can be taken back where no server answers. */
export const keepDeeds = async (tasks: readonly string[]): Promise<void> => {
  const deeds = tasks.length === 0 ? [] : await client.deedsOf(tasks.slice(-MOST))
  await keptViews.write(KEPT, { json: JSON.stringify(deeds), at: Date.now() })
}

/** The entries of the deeds by which these tasks were done: as the office has them, else as they were held ready here. */
export const deedsDone = async (tasks: readonly string[]): Promise<readonly string[]> => {
  const deeds = await client.deedsOf(tasks).catch(async problem => {
    const kept = problem instanceof Refused ? undefined : await keptViews.read(KEPT)
    const known = new Map((JSON.parse(kept?.json ?? '[]') as TaskDeed[]).map(deed => [deed.task, deed]))
    return tasks.map(task => {
      const deed = known.get(task)
      if (deed === undefined) throw problem
      return deed
    })
  })
  return deeds.flatMap(({ entries }) => entries)
}
