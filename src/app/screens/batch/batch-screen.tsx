import { useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked, Fetching } from '../../parts/asked.tsx'
import { BandPicture } from '../../pictures/band/band-picture.tsx'
import { daysBetween } from '../../text/format.ts'
import './batch.css'
import { AfterCount } from './after-count.tsx'
import type { Asking } from './asking.ts'
import { BatchEntries } from './batch-entries.tsx'
import { BatchFamily } from './batch-family.tsx'
import { BatchHead } from './batch-head.tsx'
import { BatchLife } from './batch-life.tsx'
import { BatchSums } from './batch-sums.tsx'
import { WorkAgain } from './work-again.tsx'

const route = getRouteApi('/batches/$batch')

/** One batch: its life so far, its counts against what was expected, its family, all that was said of it. */
export function BatchScreen() {
  const { t } = useTranslation()
  const { batch } = route.useParams()
  const { nursery } = useNames()
  const view = useQuery(look.batch(batch))
  const expected = useQuery(look.batchExpected(batch))
  const { behind } = route.useSearch()
  const navigate = route.useNavigate()
  /** The words of the number that was asked; from a link they are not known. */
  const [asked, setAsked] = useState<Asking | null>(null)
  const asking =
    behind === undefined
      ? null
      : asked?.number === behind
        ? asked
        : { number: behind, says: t('batch.thisNumber') }
  const show = (number: string | undefined) =>
    void navigate({ search: was => ({ ...was, behind: number }), resetScroll: false })
  const ask = (asked: Asking) => {
    setAsked(asked)
    show(asked.number)
    document.getElementById('entries')?.scrollIntoView({ block: 'start' })
  }
  return (
    <Asked query={view} what={t('batch.title', { name: '' })}>
      {data => (
        <div className="stack">
          <BatchHead view={data} onAsk={ask} />
          <AfterCount view={data} />
          <WorkAgain view={data} />
          <BatchLife view={data} />
          <BatchSums view={data} onAsk={ask} />
          <div className="batch-columns">
            <div className="stack">
              <BandPicture
                title={t('batch.expected')}
                begun={data.row.number}
                counts={data.counts}
                expected={expected.data ?? []}
                lost={data.steps.reduce((sum, { lost }) => sum + lost, 0)}
                today={daysBetween(data.row.startedOn, nursery?.today ?? deviceDay())}
              />
              {expected.isPending && <Fetching what={t('batch.band')} />}
            </div>
            <BatchFamily view={data} />
          </div>
          <BatchEntries view={data} asking={asking} onAll={() => show(undefined)} />
        </div>
      )}
    </Asked>
  )
}
