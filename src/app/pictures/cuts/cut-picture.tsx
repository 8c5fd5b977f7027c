import { useTranslation } from 'react-i18next'
import type { Drawing } from '../../../trade/guides/index.ts'
import './cuts.css'
import { CUTS } from './cuts.ts'
import { FIELD } from './stroke.ts'

/** One drawing of a guide. What it shows is said in words for those who do not see it. */
export function CutPicture({ of, silent = false }: { readonly of: Drawing; readonly silent?: boolean }) {
  const { t } = useTranslation()
  return (
    <svg
      className="cut"
      viewBox={`0 0 ${FIELD} ${FIELD}`}
      {...(silent ? { 'aria-hidden': true } : { role: 'img', 'aria-label': t(`methods.drawn.${of}`) })}
    >
      {CUTS[of].strokes.map(({ role, d }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the strokes of a drawing never change their order
        <path key={index} className={role} d={d} />
      ))}
    </svg>
  )
}
