import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { useCarried } from '../../data/use-carried.ts'
import { NurseryUnderWay } from '../../parts/nursery-under-way.tsx'
import { RefusedLine } from '../../parts/refused-line.tsx'

/** An empty nursery: where to begin. */
export function FirstRun() {
  const { t } = useTranslation()
  const explore = useCarried(
    (_: null, { signal }) => client.openInvented(signal),
    () => location.reload(),
  )
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
      <p className="soft">{t('shell.firstRun.exploreSays')}</p>
      {explore.error !== null && <RefusedLine problem={explore.error} />}
      {explore.isPending && <NurseryUnderWay says={t('shell.firstRun.exploring')} onStop={explore.stop} />}
      {explore.isStopped && <p className="soft">{t('settings.putBack.stopped')}</p>}
      <div className="row">
        <Button className="plain" isDisabled={explore.isPending} onPress={() => explore.start(null)}>
          {t('shell.firstRun.explore')}
        </Button>
      </div>
    </div>
  )
}
