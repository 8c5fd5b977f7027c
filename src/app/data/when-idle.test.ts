import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { eachWhenIdle } from './when-idle.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

const items = Array.from({ length: 1203 }, (_, index) => index)

test('each of many is done once, in order, and others have their turn between the pieces', async () => {
  const idle: (() => void)[] = []
  vi.stubGlobal('requestIdleCallback', (work: () => void) => idle.push(work))
  const done: number[] = []
  eachWhenIdle(items, item => done.push(item))
  expect(done).toEqual([])
  idle.shift()!()
  expect(done.length).toBeGreaterThan(0)
  expect(done.length).toBeLessThan(items.length)
  while (idle.length > 0) idle.shift()!()
  expect(done).toEqual(items)
})

test('where the browser cannot say when it is idle, it is done all the same; what is left is not done', async () => {
  const done: number[] = []
  eachWhenIdle(items, item => done.push(item))
  const leave = eachWhenIdle(items, () => done.push(-1))
  leave()
  await vi.runAllTimersAsync()
  expect(done).toEqual(items)
})
