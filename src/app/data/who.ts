import { useSyncExternalStore } from 'react'

const WHO = 'budstick.who'
const DEVICE = 'budstick.device'
const heard = new Set<() => void>()

/** Who writes on this device; null when nobody has said. */
export const whoNow = (): string | null => localStorage.getItem(WHO)

export const setWho = (person: string | null): void => {
  if (person === null) localStorage.removeItem(WHO)
  else localStorage.setItem(WHO, person)
  for (const tell of heard) tell()
}

const listen = (tell: () => void): (() => void) => {
  heard.add(tell)
  return () => heard.delete(tell)
}

export const useWho = (): string | null => useSyncExternalStore(listen, whoNow)

/** A name for this device, made once. */
export const deviceName = (): string => {
  const kept = localStorage.getItem(DEVICE)
  if (kept !== null) return kept
  const made = `browser ${Math.random().toString(36).slice(2, 6)}`
  localStorage.setItem(DEVICE, made)
  return made
}
