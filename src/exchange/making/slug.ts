import { foldName } from '../../trade/index.ts'

/** A name as an id: small letters, digits and hyphens, of any alphabet. */
export const slug = (text: string): string => foldName(text).replaceAll(' ', '-').slice(0, 100) || 'x'

/** An id that no one has yet: `fig`, `fig-2`, … */
export const freeId = (wanted: string, isTaken: (id: string) => boolean): string => {
  if (!isTaken(wanted)) return wanted
  for (let nth = 2; ; nth++) if (!isTaken(`${wanted}-${nth}`)) return `${wanted}-${nth}`
}
