import { useSyncExternalStore } from 'react'

export const THEMES = ['light', 'dark', 'sunlight'] as const
export type Theme = (typeof THEMES)[number]

const KEPT = 'budstick.theme'
const heard = new Set<() => void>()

export const themeNow = (): Theme => {
  const said = document.documentElement.dataset.theme
  return THEMES.find(theme => theme === said) ?? 'light'
}

/** The theme is kept on this device: the phone in the sun and the office screen differ. */
export const setTheme = (theme: Theme): void => {
  document.documentElement.dataset.theme = theme
  localStorage.setItem(KEPT, theme)
  for (const tell of heard) tell()
}

const listen = (tell: () => void): (() => void) => {
  heard.add(tell)
  return () => heard.delete(tell)
}

export const useTheme = (): Theme => useSyncExternalStore(listen, themeNow)
