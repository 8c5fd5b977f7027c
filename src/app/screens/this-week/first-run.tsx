import { useMutation } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { RefusedLine } from '../../parts/refused-line.tsx'

/** An empty nursery: where to begin. */
export function FirstRun() {
  const { t } = useTranslation()
  const explore = useMutation({ mutationFn: client.openInvented, onSuccess: () => location.reload() })
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
      {explore.isError && <RefusedLine problem={explore.error} />}
      <div className="row">
        <Button className="plain" isDisabled={explore.isPending} onPress={() => explore.mutate()}>
          {t(explore.isPending ? 'shell.firstRun.exploring' : 'shell.firstRun.explore')}
        </Button>
      </div>
    </div>
  )
}
