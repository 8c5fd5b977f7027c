import { type CheckValue, type OutsideCheck, outsideCheck, type Tolerance } from './outside-check.ts'

/** A file of expected values: `fixtures/*.json`. What a case says counts before what the file says. */
export interface Fixture {
  readonly title: string
  readonly sources: readonly { readonly citation: string; readonly where: string }[]
  readonly cases: readonly FixtureCase<unknown, unknown>[]
}

export interface FixtureCase<Inputs, Expected> {
  readonly id: string
  readonly inputs: Inputs
  readonly expected: Expected
  /** 'published', 'recomputed with …' or 'from memory'. */
  readonly basis: string
  /** The printed figure that it agrees with, and what to know about it. */
  readonly note: string
}

/**
 * The cases whose id begins with a text; a text that no case begins with is a mistake.
 * @throws RangeError for an argument out of range
 */
export function casesOf<Inputs, Expected>(
  fixture: Fixture,
  idBegins: string,
): readonly FixtureCase<Inputs, Expected>[] {
  const found = fixture.cases.filter(({ id }) => id.startsWith(idBegins))
  if (found.length === 0) throw new RangeError(`casesOf: idBegins must begin some case's id, got ${idBegins}`)
  return found as readonly FixtureCase<Inputs, Expected>[]
}

/** The source of a case as one line: what the file cites, then what the case's note adds. */
export const sourceOf = (fixture: Fixture, { note }: { readonly note: string }): string =>
  [fixture.sources.map(({ citation }) => citation).join('; '), note].filter(text => text !== '').join('. ')

/**
 * One check for each case whose id begins with a text: what is got from its inputs, against what it expects (or what
 * `expectedAs` makes of that).
 */
export const checkOf = <Inputs, Expected>(
  fixture: Fixture,
  idBegins: string,
  what: string,
  compute: (
    inputs: Inputs,
    expected: Expected,
  ) => { readonly got: CheckValue; readonly tolerance: Tolerance },
  expectedAs: (expected: Expected) => unknown = expected => expected,
): readonly OutsideCheck[] =>
  casesOf<Inputs, Expected>(fixture, idBegins).map(({ id, inputs, expected, basis, note }) =>
    outsideCheck({
      what: `${what} (${id})`,
      source: sourceOf(fixture, { note }),
      basis,
      expected: expectedAs(expected) as CheckValue,
      ...compute(inputs, expected),
    }),
  )
