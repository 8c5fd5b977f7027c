import type { ErrorComponentProps } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'

export function PageBroken({ error, reset }: ErrorComponentProps) {
  const { t } = useTranslation()
  return (
    <div className="sheet stack" role="alert">
      <h1>{t('shell.broken')}</h1>
      <p>{t('shell.brokenDetail')}</p>
      <p className="soft small">{error instanceof Error ? error.message : String(error)}</p>
      <p>
        <Button className="plain" onPress={reset}>
          {t('common.again')}
        </Button>
      </p>
    </div>
  )
}

export function PageMissing() {
  const { t } = useTranslation()
  return (
    <div className="stack">
      <h1>{t('shell.missing')}</h1>
      <p>{t('shell.missingDetail')}</p>
    </div>
  )
}
