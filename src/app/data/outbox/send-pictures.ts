import type { Entry } from '../../../record/index.ts'
import { client } from '../client.ts'
import { pictureStore } from '../device-store.ts'

/** The pictures go before the entries that name them. */
export const sendPictures = async (entries: readonly Entry[]): Promise<void> => {
  for (const { body } of entries) {
    if (body.kind !== 'photographed/1') continue
    const bytes = await pictureStore.get(body.file)
    if (bytes === undefined) continue
    await client.keepPicture(body.file, bytes)
    await pictureStore.remove(body.file)
  }
}
