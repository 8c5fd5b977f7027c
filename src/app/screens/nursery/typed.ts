import { foldName } from '../../../trade/index.ts'

/** A name as an id that no one has yet: `long-shade`, `long-shade-2`, … */
export const freeId = (name: string, taken: readonly string[]): string => {
  const wanted = foldName(name).replaceAll(' ', '-').slice(0, 100) || 'x'
  for (let nth = 1; ; nth++) {
    const id = nth === 1 ? wanted : `${wanted}-${nth}`
    if (!taken.includes(id)) return id
  }
}

/** Whether another thing is called so already, whatever its capitals and signs. */
export const isCalled = (
  name: string,
  others: readonly { readonly id: string; readonly name: string }[],
  own: string | undefined,
): boolean => others.some(other => other.id !== own && foldName(other.name) === foldName(name))
