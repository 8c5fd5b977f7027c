/** The screens in the order of a propagator's questions; the first four stand in the bar of a phone. */
export const SCREENS = [
  { id: 'work', path: '/work' },
  { id: 'season', path: '/season' },
  { id: 'orders', path: '/orders' },
  { id: 'batches', path: '/batches' },
  { id: 'benches', path: '/benches' },
  { id: 'mothers', path: '/mothers' },
  { id: 'rates', path: '/rates' },
  { id: 'year', path: '/year' },
  { id: 'methods', path: '/methods' },
  { id: 'species', path: '/species' },
  { id: 'whichTree', path: '/which-tree' },
  { id: 'checks', path: '/checks' },
  { id: 'journal', path: '/journal' },
  { id: 'nursery', path: '/nursery' },
  { id: 'settings', path: '/settings' },
] as const
export type ScreenId = (typeof SCREENS)[number]['id']

export const IN_BAR = 4
