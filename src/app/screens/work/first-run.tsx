import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'

/** An empty nursery: where to begin. */
export function FirstRun() {
  const { t } = useTranslation()
  return (
    <div className="stack first-run">
      <h1>{t('shell.firstRun.title')}</h1>
      <p>{t('shell.firstRun.says')}</p>
      <div className="row">
        <Link to="/import" className="deed large">
          {t('shell.firstRun.import')}
        </Link>
        <Link to="/nursery" className="plain large">
          {t('shell.firstRun.type')}
        </Link>
      </div>
    </div>
  )
}
