import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import { SomeOf } from '../../parts/some-of.tsx'
import { useTell } from '../../text/use-tell.ts'

/** What limits the season, each in a sentence, the dearest first. */
export function SeasonLimits({ plan }: { readonly plan: SeasonPlan }) {
  const { t } = useTranslation()
  const tell = useTell()
  const limits = [...plan.limits].sort((a, b) => b.worthPerUnit - a.worthPerUnit)
  return (
    <section className="sheet">
      <h2>{t('season.limits')}</h2>
      {limits.length === 0 ? (
        <p className="soft">{t('season.limitsNone')}</p>
      ) : (
        <SomeOf
          items={limits.map(({ rule, subject, from, sentence }) => ({
            key: `${rule} ${tell(subject)} ${from}`,
            says: tell(sentence),
          }))}
        />
      )}
    </section>
  )
}
