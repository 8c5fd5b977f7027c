import { expect, test } from 'vitest'
import type { Body, Entry } from '../../../record/index.ts'
import { doneHere } from './done-here.ts'

const entry = (id: string, body: unknown) => ({ id, body: body as Body }) as Entry

test('a task said done counts as done until the entry that says so is struck', () => {
  const done = (task: string) => entry(`say ${task}`, { kind: 'task-done/1', task, minutes: null })
  const undone = entry('undo', { kind: 'struck/1', entry: 'say b', why: 'undo' })
  const note = entry('note', { kind: 'noted/1', about: 'c', text: '' })
  expect([...doneHere([done('a'), done('b'), note, undone]).keys()]).toEqual(['a'])
  const after = entry('undo the undo', { kind: 'struck/1', entry: 'undo', why: 'undo' })
  expect([...doneHere([done('a'), done('b'), note, undone, after]).keys()]).toEqual(['a', 'b'])
})

test('a done task was done to as many as its entry says, the last one where it was done anew', () => {
  const done = (id: string, number: number) =>
    entry(id, { kind: 'task-done/2', task: 'a', number, minutes: null })
  const undone = entry('undo', { kind: 'struck/1', entry: 'first', why: 'undo' })
  expect(doneHere([done('first', 40)]).get('a')).toBe(40)
  expect(doneHere([done('first', 40), undone, done('again', 38)]).get('a')).toBe(38)
  expect(doneHere([entry('old', { kind: 'task-done/1', task: 'a', minutes: null })]).get('a')).toBeNull()
})
