import type { ScreenId } from './screens.ts'

/** Line drawings of what each screen is about, on a field of 24 × 24. */
const PATHS: Readonly<Record<ScreenId | 'more' | 'find', string>> = {
  work: 'M4 5.500l1.500 1.500L8 4M4 12l1.500 1.500L8 10.500M4 18.500 5.500 20 8 17M11.500 6H20M11.500 12.300H20M11.500 18.700H17',
  season:
    'M3 8.500h18M3 17h18M7 8.500a2.500 2.500 0 1 0 5 0 2.500 2.500 0 1 0-5 0M13.500 17a3.500 3.500 0 1 0 7 0 3.500 3.500 0 1 0-7 0',
  orders: 'M8 3.500h8.500V20l-4.250-3-4.250 3zM12.200 6.800a1 1 0 1 0 .1 0M10.500 11.500h3.500',
  batches:
    'M3.500 9h17l-2 11h-13zM8 9c0-3-1-4.500-3-5.500M12 9V3.500M16 9c0-3 1-4.500 3-5.500M9.500 9l.8 11M14.500 9l-.8 11',
  benches: 'M3 5h18v11H3zM9 5v11M9 10.500h12M15 5v5.500M5 16v4M19 16v4',
  mothers:
    'M12 21v-9M12 16l-3.500-3M12 14l3-2.500M12 3c4.500 0 7.500 2.500 7.500 6s-3 5.500-7.500 5.500S4.500 12.500 4.500 9 7.500 3 12 3zM8 21h8',
  rates:
    'M4 6h16M4 12h16M4 18h16M12.500 6a1.500 1.500 0 1 0 3 0 1.500 1.500 0 1 0-3 0M7 12a1.500 1.500 0 1 0 3 0 1.500 1.500 0 1 0-3 0M15 18a1.500 1.500 0 1 0 3 0 1.500 1.500 0 1 0-3 0',
  year: 'M12 3.500a8.500 8.500 0 1 0 .1 0M12 12l4.500-5.500M12 7.500a4.500 4.500 0 0 0-4.500 4.500',
  methods: 'M6 21v-12l6 9 6-9v12M9 12.500V3l6 1.500v8M4.500 16h3M16.500 16h3',
  checks: 'M12 3.500 21 20H3zM12 9.500v5M12 17.200v.3',
  settings: 'M4 7h9M17 7h3M15 4.800v4.400M4 17h3M11 17h9M9 14.800v4.400',
  more: 'M4 12a1 1 0 1 0 2 0 1 1 0 1 0-2 0M11 12a1 1 0 1 0 2 0 1 1 0 1 0-2 0M18 12a1 1 0 1 0 2 0 1 1 0 1 0-2 0',
  find: 'M10.500 4a6.500 6.500 0 1 0 .1 0M15.500 15.500 20.500 20.500',
}

export function ScreenIcon({ of }: { readonly of: ScreenId | 'more' | 'find' }) {
  return (
    <svg className="screen-icon" viewBox="0 0 24 24" width={24} height={24} aria-hidden="true">
      <path d={PATHS[of]} />
    </svg>
  )
}
