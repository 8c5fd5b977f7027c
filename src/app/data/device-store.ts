import type { DehydratedState } from '@tanstack/react-query'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Entry } from '../../record/index.ts'
import type { Waiting } from './outbox/outbox.ts'

interface DeviceSchema extends DBSchema {
  /** Entries made here that the server has not confirmed, in the order in which they were made. */
  outbox: { key: number; value: Waiting }
  views: { key: string; value: DehydratedState }
}

let opened: Promise<IDBPDatabase<DeviceSchema>> | undefined

const device = (): Promise<IDBPDatabase<DeviceSchema>> => {
  opened ??= openDB<DeviceSchema>('budstick', 1, {
    upgrade: database => {
      database.createObjectStore('outbox', { keyPath: 'place', autoIncrement: true })
      database.createObjectStore('views')
    },
  })
  return opened
}

export const outboxStore = {
  all: async (): Promise<readonly Waiting[]> => (await device()).getAll('outbox'),
  /** All or none of them; done only when they are on the disk. */
  add: async (entries: readonly Entry[]): Promise<void> => {
    const writing = (await device()).transaction('outbox', 'readwrite', { durability: 'strict' })
    for (const entry of entries) writing.store.add({ entry, refused: null } as Waiting)
    await writing.done
  },
  replace: async (waiting: Waiting): Promise<void> => {
    await (await device()).put('outbox', waiting)
  },
  remove: async (places: readonly number[]): Promise<void> => {
    const writing = (await device()).transaction('outbox', 'readwrite')
    for (const place of places) writing.store.delete(place)
    await writing.done
  },
}

export const keptViews = {
  read: async (): Promise<DehydratedState | undefined> => (await device()).get('views', 'last'),
  write: async (state: DehydratedState): Promise<void> => {
    await (await device()).put('views', state, 'last')
  },
}
