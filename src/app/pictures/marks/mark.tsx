import { useTranslation } from 'react-i18next'
import type { MethodMark } from '../../../trade/index.ts'
import './mark.css'

/** The cut itself, as strokes on a field of 34 × 34. `fine` strokes are thinner: veins, ties, roots. */
export const MARKS: Readonly<Record<MethodMark, { readonly strong: string; readonly fine: string }>> = {
  // A stone with its seam, the radicle going down, the plumule breaking out above.
  seed: {
    strong:
      'M17 11.500c6 0 9.500 3.300 9.500 7.200s-3.800 6.800-9.500 6.800-9.500-2.900-9.500-6.800 3.500-7.200 9.500-7.200zM17 25.500c0 2.500-1.500 3.300-1.200 6.500',
    fine: 'M17 25.300c.5-2.700.5-5 .1-7.300M17 11.500c0-3.500-.2-5.500 1.500-8.500M18 5.500c2-1.800 4-1.800 5.500-1.300-.9 1.900-2.900 2.800-5.600 2.500M15.900 28.500l-2.700 1.500M15.600 30l2.900 1.200',
  },
  // A leafy shoot; its base cut on the slant, just under a node.
  cutting: {
    strong:
      'M15.200 29.600 16 17.500 17.800 8M18.200 30.800l.9-12.300 1.700-10.200M15.200 29.600l3 1.200M16 17.500c-5.500.7-9.300-1.600-10.800-6.300 4.800-.8 9 1.200 10.900 5M19.300 15.500c1.600-4.600 5.200-6.900 10-6.300-.4 4.800-4.300 7.700-9.800 7.400M17.800 8c-1.400-2.300-.9-4.300 1.500-5.800 2 1.800 2.400 3.800 1.500 6.100',
    fine: 'M7 12.300c3 .8 5.800 2.300 8.300 4.700M27.500 10.300c-2.900.9-5.300 2.600-7.300 5',
  },
  // A branch, wrapped round its ring and tied at both ends; roots show through.
  layer: {
    strong:
      'M13.700 2v7.300M20.300 2v7.300M13.700 26.200V32M20.300 26.200V32M13.700 9.300c-8.500 3.600-8.500 13.400 0 16.900h6.600c8.500-3.500 8.500-13.300 0-16.900zM12.700 9.300h8.600M12.700 26.200h8.600',
    fine: 'M17 13.500v8M14 14.500c-.4 2.600-1.700 4.300-3.200 5.500M20 14.500c.4 2.600 1.700 4.300 3.200 5.500M15.300 18.500c-.3 2-1 3.300-2.100 4.500M18.700 18.500c.3 2 1 3.300 2.100 4.500',
  },
  // The stock cleft into a V, the scion's wedge let down into it, tied.
  graft: {
    strong: 'M10 32V14.500L17 29 24 14.500V32M13.500 17V3l7 1.300V17L17 24.300z',
    fine: 'M13.300 9.500c-3-.3-4.700-2-4.800-4.600 2.700.2 4.400 1.500 4.800 3.500M20.700 12.500c3-.3 4.700-2 4.800-4.600-2.700.2-4.400 1.500-4.800 3.500M9 22h4.700M20.300 22H25M9 26h6.800M18.200 26H25',
  },
  // A bud on its shield, laid on the stock.
  bud: {
    strong:
      'M9.500 32V2M24.500 32V2M17 5.500c4.300 4.800 4.300 14.500 0 23-4.300-8.500-4.300-18.200 0-23zM17 12c2.600 2 2.600 4.700 0 7-2.600-2.300-2.600-5 0-7z',
    fine: 'M9.500 8.500 13.800 11M20.200 11l4.300-2.500M9.500 24.500l4.800-1.300M19.700 23.200l4.800 1.300M17 19v4.500',
  },
  // Two offsets on one base, parted between.
  division: {
    strong:
      'M4.500 27c7.500 3.800 17.500 3.800 25 0M11 28.300C11 20 8.500 16.800 5.500 13c5 .6 8.300 5.500 8.600 15.800M20.500 28.600C20 17 22.500 10 27.500 3.500c2.300 7.800.8 16-3.300 24.500',
    fine: 'M17.300 22.500v9M8 29.300l-1 2.700M12.800 30l-.4 2.200M22.300 29.800l.6 2.200M26.500 28.400l1.200 2.500M23.500 26.500c1.200-6 2.300-11 3.400-17',
  },
}

/** The bare strokes, for use inside another drawing. */
export function MarkStrokes({ mark }: { readonly mark: MethodMark }) {
  return (
    <g className="mark-strokes">
      <path d={MARKS[mark].strong} />
      <path d={MARKS[mark].fine} className="mark-fine" />
    </g>
  )
}

/** The mark of a method. It is said aloud unless its name stands beside it. */
export function Mark({
  mark,
  named = false,
  size = 34,
}: {
  readonly mark: MethodMark
  readonly named?: boolean
  readonly size?: number
}) {
  const { t } = useTranslation()
  return (
    <svg
      className="mark"
      viewBox="0 0 34 34"
      width={size}
      height={size}
      {...(named ? { 'aria-hidden': true } : { role: 'img', 'aria-label': t(`trade.mark.${mark}`) })}
    >
      <MarkStrokes mark={mark} />
    </svg>
  )
}
