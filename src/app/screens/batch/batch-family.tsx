import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'

/** What a batch was made from, what was made from it, and for whom it is. */
export function BatchFamily({ view }: { readonly view: BatchView }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  return (
    <section className="sheet stack batch-family">
      <div>
        <h2>{t('batch.from')}</h2>
        <ul>
          {view.from.length === 0 && <li className="soft">{t('batch.nothingFrom')}</li>}
          {view.from.map(source => {
            const line = t('batch.sourceLine', {
              number: format.amount(source.number),
              as: term(source.as),
              name: source.name,
            })
            return (
              <li key={`${source.what} ${source.id} ${source.as}`}>
                {source.what === 'batch' ? (
                  <Link to="/batches/$batch" params={{ batch: source.id }}>
                    {line}
                  </Link>
                ) : source.what === 'mother' ? (
                  <Link to="/mothers" search={{ mother: source.id }}>
                    {line}
                  </Link>
                ) : (
                  line
                )}
              </li>
            )
          })}
        </ul>
      </div>
      <div>
        <h2>{t('batch.into')}</h2>
        <ul>
          {view.into.length === 0 && <li className="soft">{t('batch.nothingInto')}</li>}
          {view.into.map(({ batch, name, number }) => (
            <li key={batch}>
              <Link to="/batches/$batch" params={{ batch }}>
                {t('batch.intoLine', { number: format.number(number), name })}
              </Link>
            </li>
          ))}
        </ul>
        <p className="row">
          <Link to="/lineage/$what/$id" params={{ what: 'batch', id: view.row.id }}>
            {t('batch.family')}
          </Link>
          <Link to="/lineage/$what/$id/affected" params={{ what: 'batch', id: view.row.id }}>
            {t('batch.affected')}
          </Link>
        </p>
      </div>
      {view.orders.length > 0 && (
        <div>
          <h2>{t('batch.orders')}</h2>
          <ul>
            {view.orders.map(({ order, chance }) => (
              <li key={order}>
                <Link to="/orders" search={{ order }}>
                  {t('batch.orderLine', { order, chance: format.chance(chance) })}
                </Link>
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  )
}
