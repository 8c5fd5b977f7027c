/** Whole bytes of a view, as a body takes them. */
export const bodyOf = (bytes: Uint8Array): ArrayBuffer => new Uint8Array(bytes).buffer

export const download = (name: string, type: string): Record<string, string> => ({
  'content-type': type,
  'content-disposition': `attachment; filename="${name}"`,
})
