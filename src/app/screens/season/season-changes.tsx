import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import type { Change } from '../../../planning/index.ts'
import { SomeOf } from '../../parts/some-of.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'

/** What this plan does otherwise than the one before, and why. */
export function SeasonChanges({
  plan,
  accepted,
}: {
  readonly plan: SeasonPlan
  readonly accepted: string | null
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  return (
    <section className="sheet">
      <h2>{t('season.changes')}</h2>
      <p className="soft small">{t(accepted === null ? 'season.changesBefore' : 'season.changesAccepted')}</p>
      {plan.changes.length === 0 && <p className="soft">{t('season.changesNone')}</p>}
      <SomeOf
        items={plan.changes.map(change => ({
          key: tell(change.sentence),
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

/** A change with its reason, which the sentence says, and where it leads: to the order or batch that it is about. */
export function ChangeSaid({ change: { sentence, order, batch } }: { readonly change: Change }) {
  const says = useTell()(sentence)
  if (order !== null)
    return (
      <Link to="/orders" search={{ order }}>
        {says}
      </Link>
    )
  if (batch === null) return says
  return (
    <Link to="/batches/$batch" params={{ batch }}>
      {says}
    </Link>
  )
}
