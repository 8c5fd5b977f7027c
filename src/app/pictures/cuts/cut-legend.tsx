import { useTranslation } from 'react-i18next'
import type { Drawing } from '../../../trade/guides/index.ts'
import './cuts.css'
import { CUTS } from './cuts.ts'
import type { Stroke } from './stroke.ts'

/** A sample of each line that needs a word, on a field of 40 × 20. */
const SAMPLES = {
  cambium: [{ role: 'cambium', d: 'M4 10L36 10' }],
  bark: [
    { role: 'bark', d: 'M4 4L36 4L36 16L4 16Z' },
    { role: 'edge', d: 'M4 4L36 4M4 16L36 16' },
  ],
  wood: [{ role: 'wood', d: 'M4 4L36 4L36 16L4 16Z' }],
  knife: [
    { role: 'knife', d: 'M3 10L28 10' },
    { role: 'knife-head', d: 'M38 10L28 5L28 15Z' },
  ],
  move: [
    { role: 'move', d: 'M3 10L28 10' },
    { role: 'move-head', d: 'M38 10L28 5L28 15Z' },
  ],
  gone: [{ role: 'gone', d: 'M4 10L36 10' }],
  tie: [{ role: 'tie', d: 'M5 14L35 10L35 4L5 8Z' }],
  wax: [{ role: 'wax', d: 'M5 15C5 2 35 2 35 15Z' }],
} satisfies Record<string, readonly Stroke[]>
const NAMES = Object.keys(SAMPLES) as (keyof typeof SAMPLES)[]

/** What the lines mean that occur in these drawings. */
export function CutLegend({ of }: { readonly of: readonly Drawing[] }) {
  const { t } = useTranslation()
  const drawn = new Set(of.flatMap(drawing => CUTS[drawing].strokes.map(({ role }) => role)))
  return (
    <ul className="cut-legend" aria-label={t('methods.legend.title')}>
      {NAMES.filter(name => drawn.has(name)).map(name => (
        <li key={name}>
          <svg className="cut" viewBox="0 0 40 20" width={40} height={20} aria-hidden="true">
            {SAMPLES[name].map(({ role, d }) => (
              <path key={role} className={role} d={d} />
            ))}
          </svg>
          {t(`methods.legend.${name}`)}
        </li>
      ))}
    </ul>
  )
}
