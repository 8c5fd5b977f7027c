import { useEffect, useState } from 'react'
import { Button, ProgressBar } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useFormat } from '../text/use-format.tsx'
import './under-way.css'

/** Shorter than this nothing is said to be under way. */
const QUIET_MS = 100

/** What goes on and how far it is, once it takes longer than a blink; it is stopped from here where it can be. */
export function UnderWay({
  says,
  share,
  stop,
  onStop,
}: {
  readonly says: string
  /** 0 to 1; null where it is not known. */
  readonly share: number | null
  /** On the button, where it is not the usual word. */
  readonly stop?: string
  readonly onStop?: (() => void) | undefined
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const [isLate, setLate] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), QUIET_MS)
    return () => clearTimeout(timer)
  }, [])
  if (!isLate) return null
  return (
    <div className="under-way">
      <ProgressBar
        className="job"
        aria-label={says}
        {...(share === null ? { isIndeterminate: true } : { value: 100 * share })}
      >
        <span className="job-bar" data-unknown={share === null || undefined}>
          <span style={{ inlineSize: `${100 * (share ?? 0)}%` }} />
        </span>
        <span aria-live="polite">{says}</span>
        {share !== null && <span aria-hidden="true">{format.share(share)}</span>}
      </ProgressBar>
      {onStop !== undefined && (
        <Button className="quiet" onPress={onStop}>
          {stop ?? t('common.stop')}
        </Button>
      )}
    </div>
  )
}
