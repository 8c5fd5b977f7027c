import { describe, expect, test } from 'vitest'
import { speciesById, starterProtocol } from '../../../trade/facts/index.ts'
import { draftOf, type ProtocolDraft, readProtocol } from './protocol-draft.ts'

const protocol = starterProtocol('softwood_cutting', speciesById('fig')!)
const first = protocol.steps[0]!
const metric = { perArea: 1, isSouth: false }
const draft = draftOf(protocol, protocol.window.northMonths, 1)
const said = (part: Record<string, { low: string; typical: string; high: string }>): ProtocolDraft => ({
  ...draft,
  figures: { ...draft.figures, ...part },
})

describe('a protocol being changed', () => {
  test('what is not touched stays to the last digit, with its basis and its source', () => {
    expect(readProtocol(protocol, draft, metric)).toEqual({ protocol, wrong: new Set() })
  })

  test('what is not touched stays in square feet too, though it is shown rounded', () => {
    const inFeet = draftOf(protocol, protocol.window.northMonths, 10.7639)
    expect(readProtocol(protocol, inFeet, { perArea: 10.7639, isSouth: false }).protocol).toEqual(protocol)
  })

  test('a changed share is from then on set by the nursery; a decimal comma is read', () => {
    const { protocol: changed, wrong } = readProtocol(
      protocol,
      said({ [`${first.id} survival`]: { low: '50', typical: '62,5', high: '80' } }),
      metric,
    )
    expect(wrong.size).toBe(0)
    expect(changed.steps[0]!.survival).toEqual({
      low: 0.5,
      typical: 0.625,
      high: 0.8,
      basis: 'set by the nursery',
      sources: [],
    })
    expect(changed.steps.slice(1)).toEqual(protocol.steps.slice(1))
  })

  test('numbers that do not rise, a share above 100 and an empty cell are named, and the figure before stays', () => {
    const { protocol: changed, wrong } = readProtocol(
      protocol,
      said({
        [`${first.id} survival`]: { low: '50', typical: '60', high: '120' },
        [`${first.id} days`]: { low: '30', typical: '20', high: '40' },
        [`${first.id} work 0`]: { low: '', typical: '1', high: '2' },
      }),
      metric,
    )
    expect([...wrong].sort()).toEqual([`${first.id} days`, `${first.id} survival`, `${first.id} work 0`])
    expect(changed).toEqual(protocol)
  })

  test('months are those of this side of the equator', () => {
    const { protocol: changed } = readProtocol(
      protocol,
      { ...draft, months: [1, 2] },
      { perArea: 1, isSouth: true },
    )
    expect(changed.window.southMonths).toEqual([1, 2])
    expect(changed.window.northMonths).toEqual(protocol.window.northMonths)
    expect(changed.window.basis).toBe('set by the nursery')
  })
})
