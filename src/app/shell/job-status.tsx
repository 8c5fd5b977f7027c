import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useJob } from '../data/use-job.ts'
import { UnderWay } from '../parts/under-way.tsx'
import { useTell } from '../text/use-tell.ts'

/** What the planner is doing, in words, wherever one is; it can be stopped from here. */
export function JobStatus() {
  const { t } = useTranslation()
  const tell = useTell()
  const { job, running, stop } = useJob()
  const [putAway, setPutAway] = useState('')
  if (job === null || job.id === putAway || (!running && job.state !== 'failed')) return null
  if (!running)
    return (
      <div className="status warn">
        <span role="alert">
          {t('shell.job.failed')} {job.why}
        </span>
        <Button className="quiet" onPress={() => setPutAway(job.id)}>
          {t('common.close')}
        </Button>
      </div>
    )
  return (
    <div className="status">
      <UnderWay says={tell(job.says)} share={job.share} stop={t('shell.job.stop')} onStop={stop} />
    </div>
  )
}
