import fc from 'fast-check'
import { expect, test } from 'vitest'
import { pack, unpack } from './packed.ts'

test('whatever was packed is unpacked as it was, maps and texts of any script too', () => {
  const value = fc.letrec(tie => ({
    any: fc.oneof(
      { depthSize: 'small' },
      fc.constantFrom(null, true, false),
      fc.string({ unit: 'grapheme' }),
      fc.integer(),
      fc.double({ noNaN: true, noDefaultInfinity: true }).filter(x => !Object.is(x, -0)),
      fc.array(tie('any')),
      fc.dictionary(
        fc.string().filter(key => key !== '__proto__'),
        tie('any'),
      ),
      fc.array(fc.tuple(fc.string(), tie('any'))).map(pairs => new Map(pairs)),
    ),
  })).any
  fc.assert(
    fc.property(value, any => {
      expect(unpack(pack(any))).toEqual(any)
    }),
  )
})

test('numbers at the edge of what is small keep every figure', () => {
  const edges = [0, 127, 128, 2 ** 28 - 1, 2 ** 28, 2 ** 31, -1, 0.1, 1e300, Number.MAX_SAFE_INTEGER]
  expect(unpack(pack(edges))).toEqual(edges)
})

test('bytes that are cut off or not packed are refused', () => {
  const bytes = pack({ some: [1, 'two', new Map([['three', 3]])] })
  for (let length = 0; length < bytes.length; length++)
    expect(() => unpack(bytes.slice(0, length)), String(length)).toThrow()
  expect(() => unpack(new TextEncoder().encode('{"site":null}'))).toThrow()
})
