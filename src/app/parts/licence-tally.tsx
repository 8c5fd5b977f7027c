import { useTranslation } from 'react-i18next'
import type { LicenceRow } from '../../api/index.ts'
import { useFormat } from '../text/use-format.tsx'
import { Behind } from './behind.tsx'

/** A licence's terms, and year by year what was made under it and is due. */
export function LicenceTally({ row, today }: { readonly row: LicenceRow; readonly today: string }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { licence } = row
  const money = (value: number) =>
    value.toLocaleString(format.locale, { minimumFractionDigits: 2, maximumFractionDigits: 2 })
  return (
    <div className="licence">
      <h3>{t('mothers.licence.title', { cultivar: row.cultivarName })}</h3>
      <p className="small">
        {[
          t('mothers.licence.terms', { owner: licence.owner }),
          licence.treesPerYear !== null &&
            t('mothers.licence.perYear', { number: format.number(licence.treesPerYear) }),
          licence.feePerTree > 0 && t('mothers.licence.fee', { fee: money(licence.feePerTree) }),
          licence.until !== null &&
            licence.until >= today &&
            t('mothers.licence.until', { day: format.fullDay(licence.until) }),
          t('mothers.licence.alive', { alive: format.number(row.alive) }),
        ]
          .filter(Boolean)
          .join(' ')}
      </p>
      {row.isOver && licence.until !== null && (
        <p className="warn">{t('mothers.licence.over', { day: format.fullDay(licence.until) })}</p>
      )}
      {row.left !== null && (
        <p className={row.left < 0 ? 'warn strong' : 'strong'}>
          {row.left < 0
            ? t('mothers.licence.tooMany', { over: format.number(-row.left) })
            : t('mothers.licence.left', { left: format.number(row.left) })}
        </p>
      )}
      <table>
        <thead>
          <tr>
            {(['year', 'begun', 'sent', 'due'] as const).map(column => (
              <th key={column} scope="col" className="number">
                {t(`mothers.licence.${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {row.years.map(({ year, begun, sent, due, begunBy, sentBy }) => (
            <tr key={year}>
              <th scope="row" className="number">
                {year}
              </th>
              <td className="number">
                <Behind name={`begun ${year}`} says={format.number(begun)} entries={begunBy} />
              </td>
              <td className="number">
                <Behind name={`sent ${year}`} says={format.number(sent)} entries={sentBy} />
              </td>
              <td className="number">{money(due)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {licence.feePerTree > 0 && <p className="soft small">{t('mothers.licence.says')}</p>}
    </div>
  )
}
