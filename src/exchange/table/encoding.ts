/** The 32 places in which Windows-1252 is not Latin-1. Platforms differ in reading them, so they stand here. */
const windows1252 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'

const fromWindows1252 = (bytes: Uint8Array): string => {
  let text = ''
  for (let i = 0; i < bytes.length; i += 4096) text += String.fromCharCode(...bytes.subarray(i, i + 4096))
  return text.replace(/[\u0080-\u009f]/g, letter => windows1252[letter.charCodeAt(0) - 0x80] ?? letter)
}

const beginsWith = (bytes: Uint8Array, ...mark: number[]): boolean =>
  mark.every((byte, i) => bytes[i] === byte)

/** Text of one byte a letter, kept with two, shows as a nought in every second byte. */
const looksLikeUtf16 = (bytes: Uint8Array): boolean => {
  const looked = bytes.subarray(0, 400)
  return (
    looked.length >= 4 && looked.filter((byte, i) => i % 2 === 1 && byte === 0).length > looked.length / 4
  )
}

/** A byte order mark that went through a wrong reading stays as letters before the first header. */
const damagedMark = /^\uFEFF*(ï»¿|ï\.\.)+/

export interface DecodedText {
  readonly text: string
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252'
}

/**
 * Bytes of a text file as text: UTF-8 where they are that, else Windows-1252, which any bytes are. Marks of byte
 * order, whole or damaged, are taken off.
 * @source code page 1252 as in the WHATWG Encoding Standard, index windows-1252
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (beginsWith(bytes, 0xfe, 0xff)) return utf16(bytes, 'utf-16be')
  if (beginsWith(bytes, 0xff, 0xfe) || looksLikeUtf16(bytes)) return utf16(bytes, 'utf-16le')
  try {
    return { text: unmarked(new TextDecoder('utf-8', { fatal: true }).decode(bytes)), encoding: 'UTF-8' }
  } catch {
    return { text: unmarked(fromWindows1252(bytes)), encoding: 'Windows-1252' }
  }
}

const utf16 = (bytes: Uint8Array, label: 'utf-16le' | 'utf-16be'): DecodedText => ({
  text: unmarked(new TextDecoder(label).decode(bytes)),
  encoding: 'UTF-16',
})

const unmarked = (text: string): string => text.replace(damagedMark, '').replace(/^\uFEFF+/, '')
