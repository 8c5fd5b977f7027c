import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { Change, Plan } from '../../../planning/index.ts'
import { SomeOf } from '../../parts/some-of.tsx'
import { useFormat } from '../../text/use-format.ts'

/** What this plan does otherwise than the one before, and why. */
export function SeasonChanges({ plan }: { readonly plan: Plan }) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <section className="sheet">
      <h2>{t('season.changes')}</h2>
      {plan.changes.length === 0 && <p className="soft">{t('season.changesNone')}</p>}
      <SomeOf
        items={plan.changes.map(change => ({
          key: `${change.sentence} ${change.because}`,
          says: <ChangeSaid change={change} />,
        }))}
      />
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

/** A change with the order or batch that it is about, and its reason. */
export function ChangeSaid({ change: { sentence, because, order, batch } }: { readonly change: Change }) {
  return (
    <>
      {order !== null ? (
        <Link to="/orders" search={{ order }}>
          {sentence}
        </Link>
      ) : batch !== null ? (
        <Link to="/batches/$batch" params={{ batch }}>
          {sentence}
        </Link>
      ) : (
        sentence
      )}{' '}
      <span className="soft">{because}</span>
    </>
  )
}
