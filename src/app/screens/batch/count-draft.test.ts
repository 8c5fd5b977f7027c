import { describe, expect, test } from 'vitest'
import { EMPTY_COUNT, readCount, typed } from './count-draft.ts'

describe('a count on the pad', () => {
  test('those not yet to tell are the rest, unless they were counted too', () => {
    expect(readCount({ taken: '158', dead: '41', undecided: '' }, 226)).toEqual({
      taken: 158,
      dead: 41,
      undecided: 27,
      differs: 0,
    })
    expect(readCount({ taken: '158', dead: '41', undecided: '20' }, 226)?.differs).toBe(-7)
  })

  test('more than stood there is kept as counted, not cut down', () => {
    expect(readCount({ taken: '230', dead: '', undecided: '' }, 226)).toEqual({
      taken: 230,
      dead: 0,
      undecided: 0,
      differs: 4,
    })
  })

  test('nothing typed is no count; a nought typed is one', () => {
    expect(readCount(EMPTY_COUNT, 226)).toBeNull()
    expect(readCount({ ...EMPTY_COUNT, taken: '0' }, 226)).toMatchObject({ taken: 0, undecided: 226 })
  })

  test('figures are added and erased at the end, without noughts in front', () => {
    const one = typed(typed(typed(EMPTY_COUNT, 'taken', '0'), 'taken', '4'), 'taken', '1')
    expect(one.taken).toBe('41')
    expect(typed(one, 'taken', 'erase').taken).toBe('4')
  })
})
