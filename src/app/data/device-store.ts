import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Entry } from '../../record/index.ts'
import type { Waiting } from './outbox/outbox.ts'

export interface KeptView {
  readonly json: string
  /** The instant at which the server gave it. */
  readonly at: number
}

/** What shaped the answers of the server that this program knows: a mark that each build has from its sources. */
declare const ANSWERS_SHAPED_BY: string

interface DeviceSchema extends DBSchema {
  /** Entries made here that the server has not confirmed, in the order in which they were made. */
  outbox: { key: number; value: Waiting }
  /** Photographs taken here that the server does not have, by their names. */
  pictures: { key: string; value: ArrayBuffer }
  /** The last answer to every question, by the question. */
  answers: { key: string; value: KeptView & { readonly shapedBy: string }; indexes: { at: number } }
}

let opened: Promise<IDBPDatabase<DeviceSchema>> | undefined

const device = (): Promise<IDBPDatabase<DeviceSchema>> => {
  opened ??= openDB<DeviceSchema>('budstick', 6, {
    upgrade: (database, before) => {
      if (before < 1) database.createObjectStore('outbox', { keyPath: 'place', autoIncrement: true })
      if (before < 2) database.createObjectStore('pictures')
      if (before >= 2) database.deleteObjectStore('answers')
      database.createObjectStore('answers').createIndex('at', 'at')
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

export const pictureStore = {
  add: async (file: string, bytes: ArrayBuffer): Promise<void> => {
    const writing = (await device()).transaction('pictures', 'readwrite', { durability: 'strict' })
    void writing.store.put(bytes, file)
    await writing.done
  },
  get: async (file: string): Promise<ArrayBuffer | undefined> => (await device()).get('pictures', file),
  remove: async (file: string): Promise<void> => (await device()).delete('pictures', file),
}

const marked = (view: KeptView) => ({ ...view, shapedBy: ANSWERS_SHAPED_BY })

export const keptViews = {
  /** Answers of a version that shaped them otherwise are not read: they are asked for again. */
  read: async (question: string): Promise<KeptView | undefined> => {
    const kept = await (await device()).get('answers', question)
    return kept?.shapedBy === ANSWERS_SHAPED_BY ? kept : undefined
  },
  write: async (question: string, view: KeptView): Promise<void> => {
    await (await device()).put('answers', marked(view), question)
  },
  /** All or none of them. */
  writeAll: async (views: readonly (readonly [question: string, view: KeptView])[]): Promise<void> => {
    const writing = (await device()).transaction('answers', 'readwrite')
    for (const [question, view] of views) void writing.store.put(marked(view), question)
    await writing.done
  },
  forgetBefore: async (at: number): Promise<void> => {
    const writing = (await device()).transaction('answers', 'readwrite')
    for (const question of await writing.store.index('at').getAllKeys(IDBKeyRange.upperBound(at)))
      void writing.store.delete(question)
    await writing.done
  },
}
