import { afterAll, beforeAll, expect, test } from 'vitest'
import { nurseryWithFewOrders } from '../../test/few-orders.ts'
import { discard, newFolder, type ServedNursery, serveNursery, until } from '../../test/served-nursery.ts'
import type { OrderRow, PlanState } from '../api/index.ts'
import { WhatIf } from '../planning/index.ts'

const TODAY = '2026-05-19'

let folder: string
let nursery: ServedNursery
beforeAll(async () => {
  folder = newFolder()
  nursery = await serveNursery(folder, TODAY, nurseryWithFewOrders(TODAY, 4))
})
afterAll(async () => {
  await nursery.close()
  discard(folder)
})

const ask = (suppose: unknown, signal?: AbortSignal) =>
  nursery.ask('/api/what-if', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ suppose }),
    ...(signal && { signal }),
  })
const state = async (): Promise<PlanState> => (await nursery.ask('/api/plan')).json
/** The first order, asked for otherwise: it is filled from trees that are finished. */
const otherwise = async (more: Record<string, unknown>) => {
  const [row] = (await nursery.ask('/api/orders')).json as OrderRow[]
  return { kind: 'order-changed/1', order: { ...row!.order, ...more }, why: '' } as const
}

test('before there is a plan, and while one is made, there is no answer, and it is said why', async () => {
  const supposed = await otherwise({ sure: 0.7 })
  expect(await ask(supposed)).toMatchObject({ status: 404, json: { what: 'No plan is made yet' } })
  await nursery.ask('/api/plan', { method: 'POST' })
  expect(await ask(supposed)).toMatchObject({ status: 409, json: { what: 'A plan is being made' } })
  await until('the plan', state, ({ job }) => job?.state === 'done')
})

test('far more trees, and later, than stand finished cost more and ask for starts; nothing is entered and the plan stands', async () => {
  const before = { seq: nursery.memory.throughSeq(), plan: (await state()).plan!.id }
  const { status, json } = await ask(
    await otherwise({ number: 900, due: '2028-04-30', latest: '2028-05-31' }),
  )
  expect(status).toBe(200)
  const answer = WhatIf.parse(json)
  expect(answer.saves).toBeLessThan(0)
  expect(answer.starts.reduce((sum, { before: was, after }) => sum + after - was, 0)).toBeGreaterThan(0)
  expect({ seq: nursery.memory.throughSeq(), plan: (await state()).plan!.id }).toEqual(before)
})

test('a later question ends an earlier one, and one that nobody waits for is given up', async () => {
  const [first, second] = [ask(await otherwise({ sure: 0.95 })), ask(await otherwise({ sure: 0.8 }))]
  expect((await first).status).toBe(409)
  expect((await second).status).toBe(200)
  const quit = new AbortController()
  const given = ask(await otherwise({ number: 900 }), quit.signal)
  quit.abort()
  expect((await given).status).toBe(409)
})

test('an order that is not known, and an entry that cannot be supposed, are refused with what to do', async () => {
  expect(await ask(await otherwise({ id: 'none' }))).toMatchObject({
    status: 404,
    json: { mend: 'Place it first.' },
  })
  expect((await ask({ kind: 'noted/1', about: '', text: 'frost' })).status).toBe(400)
})
