import type { BatchId, Cultivar, StepId } from '../../trade/index.ts'
import type { Registers } from './register-questions.ts'
import type { RegisterState } from './registers.ts'

/** Registers that remember who asked after what. */
export interface Asking {
  /** Folds a family (again), and remembers what it asked after. */
  readonly fold: <T>(head: BatchId, fold: (registers: Registers) => T) => T
  /** The families that asked after any of these register keys. */
  readonly askers: (keys: readonly string[]) => BatchId[]
}

const none: readonly StepId[] = []

export function askRegisters(state: RegisterState): Asking {
  /** A number for each key that was ever asked after: a family keeps the few that it asked after in a list. */
  const numbers = new Map<string, Map<string, number>>()
  const askedBy = new Map<BatchId, number[]>()
  /** By the family that is folded now. */
  const asked: number[] = []
  let keys = 0
  const note = (what: string, id: string): void => {
    let byId = numbers.get(what)
    if (!byId) {
      byId = new Map()
      numbers.set(what, byId)
    }
    let number = byId.get(id)
    if (number === undefined) {
      number = keys++
      byId.set(id, number)
    }
    if (!asked.includes(number)) asked.push(number)
  }
  const registers: Registers = {
    steps(id) {
      note('protocol', id)
      return state.steps.get(id) ?? none
    },
    kind(id) {
      note('kind', id)
      return state.kinds.get(id) ?? state.formerKinds.get(id)
    },
    cultivarName(id) {
      note('cultivar', id)
      return state.cultivars.get(id as Cultivar['id'])?.name ?? id
    },
    bench(id) {
      note('bench', id)
      const bench = state.benches.get(id)
      if (bench) return { name: bench.name, removedBy: null }
      const former = state.formerBenches.get(id)
      return former && { name: former.bench.name, removedBy: former.removedBy }
    },
    mother(id) {
      note('mother', id)
      return state.mothers.get(id)
    },
    lot(id) {
      note('lot', id)
      return state.lots.get(id)
    },
    order(id) {
      note('order', id)
      return state.orders.get(id)
    },
  }
  return {
    fold(head, fold) {
      asked.length = 0
      const folded = fold(registers)
      askedBy.set(head, asked.slice())
      return folded
    },
    askers(changed) {
      const wanted = new Set<number>()
      for (const key of changed) {
        const space = key.indexOf(' ')
        const number = numbers.get(key.slice(0, space))?.get(key.slice(space + 1))
        if (number !== undefined) wanted.add(number)
      }
      if (wanted.size === 0) return []
      return [...askedBy].flatMap(([head, list]) => (list.some(number => wanted.has(number)) ? [head] : []))
    },
  }
}
