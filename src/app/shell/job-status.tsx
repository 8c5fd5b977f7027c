import { useState } from 'react'
import { Button, ProgressBar } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useJob } from '../data/use-job.ts'
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
      <ProgressBar className="job" value={100 * job.share} aria-label={t('shell.job.running')}>
        {({ percentage }) => (
          <>
            <span className="job-bar">
              <span style={{ inlineSize: `${percentage ?? 0}%` }} />
            </span>
            <span aria-live="polite">{tell(job.says)}</span>
          </>
        )}
      </ProgressBar>
      <Button className="quiet" onPress={stop}>
        {t('shell.job.stop')}
      </Button>
    </div>
  )
}
