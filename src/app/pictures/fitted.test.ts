import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fitted, wrapped, wrappedIn } from './fitted.ts'

test('what is too long is cut, and says so', () => {
  expect(fitted('budwood', 7)).toBe('budwood')
  expect(fitted('budwood', 5)).toBe('budw…')
})

test('lines break between words, hold no more letters than asked unless one word alone does, and lose nothing', () => {
  expect(wrapped('Bud asleep until headed back', 10)).toEqual(['Bud asleep', 'until', 'headed', 'back'])
  fc.assert(
    fc.property(
      fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { maxLength: 12 }),
      fc.integer({ min: 3, max: 30 }),
      (words, letters) => {
        const lines = wrapped(words.join(' '), letters)
        expect(lines.join(' ')).toBe(words.join(' '))
        for (const line of lines) expect(line.length <= letters || !line.includes(' ')).toBe(true)
      },
    ),
  )
})

test('text that takes more lines than it may have is cut in the last of them alone', () => {
  expect(wrappedIn('a grower up the valley', 15, 2)).toEqual(['a grower up the', 'valley'])
  expect(wrappedIn('a grower up the valley', 30, 2)).toEqual(['a grower up the valley'])
  expect(wrappedIn('a grower far up the long valley', 12, 2)).toEqual(['a grower far', 'up the long…'])
  expect(wrappedIn('', 12, 2)).toEqual([])
})
