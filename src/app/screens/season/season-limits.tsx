import { useTranslation } from 'react-i18next'
import type { Plan } from '../../../planning/index.ts'

/** What limits the season, each in a sentence, the dearest first. */
export function SeasonLimits({ plan }: { readonly plan: Plan }) {
  const { t } = useTranslation()
  const limits = [...plan.limits].sort((a, b) => b.worthPerUnit - a.worthPerUnit)
  return (
    <section className="sheet">
      <h2>{t('season.limits')}</h2>
      {limits.length === 0 ? (
        <p className="soft">{t('season.limitsNone')}</p>
      ) : (
        <ul className="sentences">
          {limits.map(limit => (
            <li key={`${limit.rule} ${limit.subject} ${limit.from}`}>{limit.sentence}</li>
          ))}
        </ul>
      )}
    </section>
  )
}
