import { useSyncExternalStore } from 'react'

/** A count just made, and how sure its orders were before it: kept until the plan has answered. */
export interface Aftermath {
  readonly batch: string
  readonly planBefore: string | null
  readonly throughSeqBefore: number
  readonly chances: Readonly<Record<string, number>>
  /** The orders that this batch helps to fill. */
  readonly orders: readonly string[]
}

const KEPT = 'budstick.after-count'

const readKept = (): Aftermath | null => {
  const kept = sessionStorage.getItem(KEPT)
  return kept === null ? null : (JSON.parse(kept) as Aftermath)
}

let last: Aftermath | null = readKept()
const heard = new Set<() => void>()

export const setAftermath = (aftermath: Aftermath | null): void => {
  last = aftermath
  if (aftermath === null) sessionStorage.removeItem(KEPT)
  else sessionStorage.setItem(KEPT, JSON.stringify(aftermath))
  for (const tell of heard) tell()
}

const listen = (tell: () => void): (() => void) => {
  heard.add(tell)
  return () => heard.delete(tell)
}

export const useAftermath = (batch: string): Aftermath | null => {
  const now = useSyncExternalStore(listen, () => last)
  return now?.batch === batch ? now : null
}

const REPLAN = 'budstick.plan-after-count'

/** Whether this device asks for a new plan by itself after a count. */
export const plansAfterCount = (): boolean => localStorage.getItem(REPLAN) !== 'no'
export const setPlansAfterCount = (yes: boolean): void => localStorage.setItem(REPLAN, yes ? 'yes' : 'no')
