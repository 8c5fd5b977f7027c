import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { AffectedView } from '../../../api/index.ts'
import { Behind } from '../../parts/behind.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** Who has, is promised or waits for trees that may carry it: one row for each letter to write. */
export function Letters({ view }: { readonly view: AffectedView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const count = (number: number) => ({ count: number, shown: format.number(number) })
  return (
    <section className="sheet">
      <h2>{t('lineage.affected.who')}</h2>
      <p className="soft small">
        {view.letters.length === 0 ? t('lineage.affected.nobody') : t('lineage.affected.whoSays')}
      </p>
      <ul className="affected-list">
        {view.letters.map(letter => {
          const { order, buyer, kindNames, wanted, due, sent, lastSent, promised, planned, batches } = letter
          const kinds = format.list(kindNames)
          return (
            <li key={order ?? `to ${buyer}`}>
              <div>
                <p className="strong">{buyer}</p>
                <p className="small">
                  {order === null || due === null ? (
                    t('lineage.affected.noOrder', { kinds })
                  ) : (
                    <Link to="/orders" search={{ order }}>
                      {t('lineage.affected.orderOf', {
                        order,
                        number: format.number(wanted ?? 0),
                        kinds,
                        day: format.fullDay(due),
                      })}
                    </Link>
                  )}
                </p>
              </div>
              <div>
                {sent > 0 && lastSent !== null && (
                  <p className="warn strong">
                    <Behind
                      name={order ?? `to ${buyer}`}
                      says={t('lineage.affected.has', { ...count(sent), day: format.fullDay(lastSent) })}
                      entries={letter.sentBy}
                    />
                  </p>
                )}
                {promised > 0 && <p>{t('lineage.affected.promised', count(promised))}</p>}
                {planned > 0 && <p>{t('lineage.affected.planned', count(planned))}</p>}
                {letter.isWaiting && <p>{t('lineage.affected.waits')}</p>}
                {batches.length > 0 && (
                  <p className="soft small">
                    {t('lineage.affected.from', { batches: format.list(batches) })}
                  </p>
                )}
              </div>
            </li>
          )
        })}
      </ul>
    </section>
  )
}
