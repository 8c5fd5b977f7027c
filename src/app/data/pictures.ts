import { pictureFileOf } from '../../api/index.ts'
import { pictureStore } from './device-store.ts'
import { type Said, say } from './say.ts'

/** A rooted cutting or a union is well seen on so many pixels, in some 300 kB. */
const LONGEST_PIXELS = 1600
const QUALITY = 0.8

/** As small as serves, upright, and without where and when the camera says that it was taken. */
export const shrunk = async (photo: Blob): Promise<Blob> => {
  const whole = await createImageBitmap(photo, { imageOrientation: 'from-image' })
  const scale = Math.min(1, LONGEST_PIXELS / Math.max(whole.width, whole.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(whole.width * scale))
  canvas.height = Math.max(1, Math.round(whole.height * scale))
  canvas.getContext('2d')!.drawImage(whole, 0, 0, canvas.width, canvas.height)
  whole.close()
  return new Promise((done, fail) =>
    canvas.toBlob(
      small => (small === null ? fail(new Error('The picture could not be made smaller.')) : done(small)),
      'image/jpeg',
      QUALITY,
    ),
  )
}

/** Says that there is a photograph of something; the picture waits on this device with its entry. */
export const sayPicture = async (about: string, picture: Blob, caption: string): Promise<Said> => {
  const bytes = await picture.arrayBuffer()
  const file = await pictureFileOf(bytes)
  await pictureStore.add(file, bytes)
  return say([{ kind: 'photographed/1', about, file, caption }])
}
