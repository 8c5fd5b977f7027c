import type { Body } from '../../record/index.ts'

/** An entry's kind and facts in one line, for a list of what waits; the office words it in full once it has it. */
export const bodySays = (body: Body): string => {
  const facts = Object.entries(body)
    .filter(([key, value]) => key !== 'kind' && (typeof value === 'string' || typeof value === 'number'))
    .map(([key, value]) => `${key} ${value}`)
  const what = body.kind.split('/')[0]!.replaceAll('-', ' ')
  return facts.length === 0 ? what : `${what}: ${facts.join(', ')}`
}
