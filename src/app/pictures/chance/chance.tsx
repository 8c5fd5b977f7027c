import { useTranslation } from 'react-i18next'
import { useFormat } from '../../text/use-format.tsx'
import './chance.css'
import { isUnsure } from './unsure.ts'

/** A chance as a bar with a notch where it was asked to be; under the notch it also says so by shape. */
export function Chance({ chance, asked }: { readonly chance: number | null; readonly asked: number }) {
  const { t } = useTranslation()
  const format = useFormat()
  if (chance === null) return <span className="soft small">{t('orders.noChance')}</span>
  const unsure = isUnsure(chance, asked)
  return (
    <span className={unsure ? 'chance unsure' : 'chance'}>
      <span className="chance-figure">
        {unsure && <span aria-hidden="true">▾ </span>}
        {format.chance(chance)}
        <span className="unseen"> {t('orders.asked', { asked: format.share(asked) })}</span>
      </span>
      <span className="chance-bar" aria-hidden="true">
        <span style={{ inlineSize: `${100 * chance}%` }} />
        <i style={{ insetInlineStart: `${100 * asked}%` }} />
      </span>
    </span>
  )
}
