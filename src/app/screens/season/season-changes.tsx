import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { Plan } from '../../../planning/index.ts'
import { useFormat } from '../../text/use-format.ts'

/** What this plan does otherwise than the one before, and why. */
export function SeasonChanges({ plan }: { readonly plan: Plan }) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <section className="sheet">
      <h2>{t('season.changes')}</h2>
      {plan.changes.length === 0 && <p className="soft">{t('season.changesNone')}</p>}
      <ul className="sentences">
        {plan.changes.map(change => (
          <li key={`${change.sentence} ${change.because}`}>
            {change.order !== null ? (
              <Link to="/orders" search={{ order: change.order }}>
                {change.sentence}
              </Link>
            ) : change.batch !== null ? (
              <Link to="/batches/$batch" params={{ batch: change.batch }}>
                {change.sentence}
              </Link>
            ) : (
              <span>{change.sentence}</span>
            )}{' '}
            <span className="soft">{change.because}</span>
          </li>
        ))}
      </ul>
      {plan.moved.starts > 0 && (
        <p className="soft">
          {t('season.moved', {
            count: plan.moved.starts,
            shown: format.number(plan.moved.starts),
            saved: format.money(plan.moved.saved),
          })}
        </p>
      )}
    </section>
  )
}
