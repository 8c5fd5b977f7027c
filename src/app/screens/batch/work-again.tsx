import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekSaid } from '../../text/use-week-said.ts'

/** After a count of what was worked: what still takes, and whether to work the failed again. */
export function WorkAgain({ view: { row, counts } }: { readonly view: BatchView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const week = useWeekSaid()
  const { data: again } = useQuery({ ...look.workAgain(row.id), enabled: counts.length > 0 })
  if (again == null) return null
  const { undecided, stillTake, timedByBatches, failed, number, trees, worth, cost, lastWeek, helps } = again
  return (
    <section className="sheet stack">
      <h2>{t('batch.again.title')}</h2>
      {undecided > 0 && (
        <p>
          {t('batch.again.undecided', {
            count: undecided,
            shown: format.number(undecided),
            takes: format.number(stillTake.mean),
            range: format.range(Math.round(stillTake.low), Math.round(stillTake.high)),
            chance: format.chance(stillTake.chance),
          })}{' '}
          <span className="soft small">
            {timedByBatches > 0
              ? t('batch.again.timed', { count: timedByBatches, shown: format.number(timedByBatches) })
              : t('batch.again.timedByProtocol')}
          </span>
        </p>
      )}
      {failed > 0 &&
        (lastWeek === null ? (
          <p>{t('batch.again.helpsNone', { count: failed, shown: format.number(failed) })}</p>
        ) : (
          <>
            <p className={worth > 0 && number > 0 ? 'strong' : undefined}>
              {number > 0 && worth > 0
                ? t('batch.again.pays', {
                    count: number,
                    shown: format.number(number),
                    failed: format.number(failed),
                    trees: format.number(trees),
                    worth: format.money(worth),
                    cost: format.money(cost),
                  })
                : number > 0
                  ? t('batch.again.paysNot', { count: number, shown: format.number(number) })
                  : t('batch.again.notNow', { count: failed, shown: format.number(failed) })}
            </p>
            <ul>
              {helps.map(({ order, lastWeek: last, trees: lacking }) => (
                <li key={order}>
                  <Link to="/orders" search={{ order }}>
                    {t('batch.again.helps', { order, lacking: format.amount(lacking), week: week(last) })}
                  </Link>
                </li>
              ))}
            </ul>
          </>
        ))}
    </section>
  )
}
