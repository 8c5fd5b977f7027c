import { useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import './count.css'
import { CountPad } from './count-pad.tsx'

const route = getRouteApi('/batches/$batch/count')

/** One look over a batch, at the bench. */
export function CountScreen() {
  const { t } = useTranslation()
  const { batch } = route.useParams()
  const { step, task } = route.useSearch()
  const view = useQuery(look.batch(batch))
  return (
    <Asked query={view} what={t('batch.title', { name: '' })}>
      {data => {
        const standing = data.steps
          .map(({ step: id, name, sign }) => ({
            id,
            name,
            sign,
            number: data.portions
              .filter(portion => portion.step === id)
              .reduce((sum, { number }) => sum + number, 0),
          }))
          .filter(({ number }) => number > 0)
        if (standing.length === 0) return <p className="sheet">{t('batch.countPage.nothing')}</p>
        const first = standing.find(({ id }) => id === step) ?? standing[0]!
        return <CountPad view={data} standing={standing} firstStep={first.id} task={task ?? null} />
      }}
    </Asked>
  )
}
