import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { painted } from './painted.ts'

let frames: (() => void)[] = []
beforeEach(() => {
  vi.useFakeTimers()
  frames = []
  vi.stubGlobal('requestAnimationFrame', (frame: () => void) => frames.push(frame))
})
afterEach(() => {
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

const watched = () => {
  const log: string[] = []
  void painted().then(() => log.push('begun'))
  return log
}

test('work that follows on a tap begins after the frame in which the tap is answered, not before or in it', async () => {
  const log = watched()
  await vi.advanceTimersByTimeAsync(20)
  expect(log).toEqual([])
  for (const frame of frames) frame()
  await Promise.resolve()
  expect(log).toEqual([])
  await vi.advanceTimersByTimeAsync(1)
  expect(log).toEqual(['begun'])
})

test('on a page that nobody sees, where no frame comes, it begins all the same', async () => {
  const log = watched()
  await vi.advanceTimersByTimeAsync(1000)
  expect(log).toEqual(['begun'])
})
