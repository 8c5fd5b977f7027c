import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { setAftermath, useAftermath } from '../../data/aftermath.ts'
import { useOutbox } from '../../data/outbox/use-outbox.ts'
import { look } from '../../data/queries.ts'
import { useJob } from '../../data/use-job.ts'
import { Asked } from '../../parts/asked.tsx'
import { SomeOf } from '../../parts/some-of.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { ChangeSaid } from '../season/season-changes.tsx'
import { whatChanged } from './what-changed.ts'

/** After a count: how sure its orders were and are, and what the plan now does about it. */
export function AfterCount({ view }: { readonly view: BatchView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const aftermath = useAftermath(view.row.id)
  const { data: planned } = useQuery(look.plan())
  const { job, running, start } = useJob()
  const { waiting } = useOutbox()
  const plan = planned?.plan ?? null
  const isNew =
    aftermath !== null &&
    plan !== null &&
    plan.id !== aftermath.planBefore &&
    plan.throughSeq > aftermath.throughSeqBefore
  const season = useQuery({ ...look.seasonPlan(), enabled: isNew })
  if (aftermath === null) return null

  const isUnsent = waiting.some(({ entry: { body } }) => 'batch' in body && body.batch === view.row.id)
  const body = () => {
    if (isUnsent) return <p>{t('batch.after.here')}</p>
    if (running)
      return (
        <p aria-live="polite">{t('batch.after.planning', { says: job === null ? '' : tell(job.says) })}</p>
      )
    if (isNew && season.data?.id !== plan.id)
      return (
        <Asked query={season} what={t('season.title')}>
          {() => null}
        </Asked>
      )
    if (isNew && season.data !== undefined) {
      const { orders, others, sentences } = whatChanged(aftermath, season.data)
      return (
        <>
          <ul className="after-chances">
            {orders.map(({ order, before, after, moved }) => (
              <li key={order}>
                <Link to="/orders" search={{ order }}>
                  {moved
                    ? t('batch.after.chance', {
                        order,
                        before: format.chance(before),
                        after: format.chance(after),
                      })
                    : t('batch.after.chanceSame', { order, after: format.chance(after) })}
                </Link>
              </li>
            ))}
          </ul>
          <p>
            {others > 0
              ? t('batch.after.others', { count: others, shown: format.number(others) })
              : orders.every(({ moved }) => !moved) && t('batch.after.none')}
          </p>
          <h3>{t('batch.after.why')}</h3>
          {sentences.length === 0 && <p>{t('batch.after.nothingElse')}</p>}
          <SomeOf
            items={sentences.map(change => ({
              key: tell(change.sentence),
              says: <ChangeSaid change={change} />,
            }))}
          />
          <p>
            <Link to="/season">{t('batch.after.season')}</Link>
          </p>
        </>
      )
    }
    if (job?.state === 'failed')
      return <p className="warn">{t('batch.after.failed', { why: job.why ?? '' })}</p>
    return (
      <div className="row">
        <p>{t('batch.after.ask')}</p>
        <Button className="deed" onPress={start}>
          {t('batch.after.plan')}
        </Button>
      </div>
    )
  }
  return (
    <section className="sheet after" aria-live="polite">
      <div className="page-head">
        <h2>{t('batch.after.title')}</h2>
        <Button className="quiet" onPress={() => setAftermath(null)}>
          {t('common.close')}
        </Button>
      </div>
      {body()}
    </section>
  )
}
