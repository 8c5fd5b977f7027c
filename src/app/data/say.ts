import { uuidv7 } from 'uuidv7'
import type { NurseryView } from '../../api/index.ts'
import type { Body, Entry } from '../../record/index.ts'
import type { EntryId, PersonId } from '../../trade/index.ts'
import { outbox } from './outbox/use-outbox.ts'
import { painted } from './painted.ts'
import { queryClient } from './query-client.ts'
import { deviceDay, deviceTime } from './today.ts'
import { deviceName, whoNow } from './who.ts'

/** What came of saying something: the entries as made, and whether this device keeps them. */
export interface Said {
  readonly entries: readonly Entry[]
  readonly kept: boolean
}

/** The nursery's date when the server told it last today; this device's date else. */
const today = (): string => {
  const state = queryClient.getQueryState<NurseryView>(['nursery'])
  const fresh = state?.data !== undefined && deviceDay(new Date(state.dataUpdatedAt)) === deviceDay()
  return fresh ? state.data!.today : deviceDay()
}

/**
 * Says facts about the nursery: kept on this device at once, sent to the server as soon as it answers. At what hour of an
 * earlier day something happened is not known.
 */
export const say = async (bodies: readonly Body[], on = today()): Promise<Said> => {
  const at = on === today() ? deviceTime() : null
  const entries = bodies.map(
    (body): Entry => ({
      id: uuidv7() as EntryId,
      on,
      at,
      by: whoNow() as PersonId | null,
      device: deviceName(),
      body,
    }),
  )
  const kept = await outbox.add(entries)
  if (kept) void painted().then(outbox.send)
  return { entries, kept }
}

/** Strikes entries: they stay to be seen, and count no more. */
export const strike = (entries: readonly string[], why: string): Promise<Said> =>
  say(entries.map(entry => ({ kind: 'struck/1', entry: entry as EntryId, why })))
