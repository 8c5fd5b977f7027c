import { expect, test } from 'vitest'
import type { Body, Entry } from '../../../record/index.ts'
import { doneHere } from './done-here.ts'

const entry = (id: string, body: unknown) => ({ id, body: body as Body }) as Entry

test('a task said done counts as done until the entry that says so is struck', () => {
  const done = (task: string) => entry(`say ${task}`, { kind: 'task-done/1', task, minutes: null })
  const undone = entry('undo', { kind: 'struck/1', entry: 'say b', why: 'undo' })
  const note = entry('note', { kind: 'noted/1', about: 'c', text: '' })
  expect([...doneHere([done('a'), done('b'), note, undone])]).toEqual(['a'])
  const after = entry('undo the undo', { kind: 'struck/1', entry: 'undo', why: 'undo' })
  expect([...doneHere([done('a'), done('b'), note, undone, after])]).toEqual(['a', 'b'])
})
