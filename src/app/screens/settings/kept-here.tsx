import { useTranslation } from 'react-i18next'
import { useKeptAhead } from '../../data/ahead.ts'
import { useFormat } from '../../text/use-format.tsx'

/** What this device can show where no server answers. */
export function KeptHere() {
  const { t } = useTranslation()
  const format = useFormat()
  const kept = useKeptAhead()
  return (
    <div className="setting">
      <span className="field-label">{t('settings.keptHere.label')}</span>
      <p className="soft small">
        {kept === null
          ? t('settings.keptHere.none')
          : t(kept.batches < kept.ofBatches ? 'settings.keptHere.some' : 'settings.keptHere.all', {
              batches: format.number(kept.batches),
              ofBatches: format.number(kept.ofBatches),
              mothers: format.number(kept.mothers),
              benches: format.number(kept.benches),
              at: format.moment(kept.at),
            })}
      </p>
    </div>
  )
}
