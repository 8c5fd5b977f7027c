import { useQuery } from '@tanstack/react-query'
import { getRouteApi, Link } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { BenchStand } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './bench-count.css'
import { BenchDifferences } from './bench-differences.tsx'
import { BenchLines } from './bench-lines.tsx'
import { useBenchCount } from './use-bench-count.ts'

const route = getRouteApi('/benches/$bench/count')

/** A bench counted against the record: what is seen, then the differences, then entries with their causes. */
export function BenchCountScreen() {
  const { t } = useTranslation()
  const { bench } = route.useParams()
  const stand = useQuery(look.benchStand(bench))
  return (
    <Asked query={stand} what={t('benches.counting.title', { name: '' })}>
      {view => <Counting key={view.bench} stand={view} />}
    </Asked>
  )
}

function Counting({ stand }: { readonly stand: BenchStand }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [draft, setDraft] = useBenchCount(stand.bench)
  const [isLooking, setLooking] = useState(false)
  return (
    <div className="stack bench-count">
      <div>
        <p className="small">
          <Link to="/benches" search={{ bench: stand.bench }}>
            {t('benches.title')}
          </Link>
        </p>
        <h1>{t('benches.counting.title', { name: stand.name })}</h1>
        <p>
          {stand.lines.length === 0
            ? t('benches.counting.nothing')
            : t('benches.counting.says', {
                count: stand.lines.length,
                shown: format.number(stand.lines.length),
              })}{' '}
          <span className="soft">
            {stand.lastCounted === null
              ? t('benches.counting.never')
              : t('benches.counting.last', { day: format.fullDay(stand.lastCounted) })}
          </span>
        </p>
      </div>
      {isLooking ? (
        <BenchDifferences stand={stand} draft={draft} onDraft={setDraft} onBack={() => setLooking(false)} />
      ) : (
        <BenchLines stand={stand} draft={draft} onDraft={setDraft} onLook={() => setLooking(true)} />
      )}
    </div>
  )
}
