import { useSyncExternalStore } from 'react'
import { client } from '../client.ts'
import { outboxStore } from '../device-store.ts'
import { createOutbox, type OutboxState } from './outbox.ts'
import { sendPictures } from './send-pictures.ts'

export const outbox = createOutbox(outboxStore, async entries => {
  await sendPictures(entries)
  return client.pushEntries(entries)
})

export const useOutbox = (): OutboxState => useSyncExternalStore(outbox.onChange, outbox.state)

const RETRY_MS = 8000

/** Opens the outbox and keeps trying while the server is away. */
export const keepSending = (): void => {
  void outbox.open()
  addEventListener('online', () => void outbox.send())
  setInterval(() => {
    const { link, waiting } = outbox.state()
    if (link === 'away' || waiting.some(({ refused }) => refused === null)) void outbox.send()
  }, RETRY_MS)
}
