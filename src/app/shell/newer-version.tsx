import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { takeNewerVersion, useNewerVersion } from '../data/newer-version.ts'

/** Says that the server has newer pages than this device, and loads them when asked. */
export function NewerVersion() {
  const { t } = useTranslation()
  if (!useNewerVersion()) return null
  return (
    <div className="status">
      <span role="status">{t('shell.newer.here')}</span>
      <Button className="quiet" onPress={takeNewerVersion}>
        {t('shell.newer.take')}
      </Button>
    </div>
  )
}
