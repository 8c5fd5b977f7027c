import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { COST_PARTS, WEIGHED } from './cost-parts.ts'

/** The cost of the season by what it goes into, the largest first. */
export function SeasonCost({ plan: { cost, costParts } }: { readonly plan: SeasonPlan }) {
  const { t } = useTranslation()
  const format = useFormat()
  const parts = COST_PARTS.map(part => ({ part, amount: costParts[part] ?? 0 }))
    .filter(({ amount }) => amount !== 0)
    .sort((a, b) => b.amount - a.amount)
  const most = Math.max(1, ...parts.map(({ amount }) => amount))
  return (
    <section className="sheet">
      <h2>{t('season.costs.title')}</h2>
      {parts.length === 0 && <p className="soft">{t('season.costs.none')}</p>}
      {parts.length > 0 && (
        <table className="season-cost">
          <tbody>
            {parts.map(({ part, amount }) => (
              <tr key={part}>
                <th scope="row">
                  {t(`season.costs.part.${part}`)}
                  <span
                    className="cost-bar"
                    style={{ inlineSize: `${(100 * Math.max(0, amount)) / most}%` }}
                  />
                </th>
                <td className="number">{format.money(amount)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{t('season.costs.all')}</th>
              <td className="number">{format.money(cost)}</td>
            </tr>
          </tfoot>
        </table>
      )}
      {parts.some(({ part }) => WEIGHED.includes(part)) && (
        <p className="soft small">{t('season.costs.lost')}</p>
      )}
    </section>
  )
}
