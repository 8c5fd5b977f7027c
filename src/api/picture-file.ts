import * as z from 'zod'

/** A picture's name: the SHA-256 of its bytes, in hexadecimal. */
export const PictureFile = z
  .string()
  .regex(/^[0-9a-f]{64}\.jpg$/, 'A picture is named by the SHA-256 of its bytes, as in 9f86….jpg')

/** The name for these bytes; in browsers and on the server alike. */
export const pictureFileOf = async (bytes: ArrayBuffer): Promise<string> => {
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
  return `${[...hash].map(byte => byte.toString(16).padStart(2, '0')).join('')}.jpg`
}
