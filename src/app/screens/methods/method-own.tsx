import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { RateRow } from '../../../api/index.ts'
import type { Protocol } from '../../../trade/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { tellingRates } from './telling-rates.ts'

/** What the nursery's own batches of a method taught, beside what the protocol assumed. */
export function MethodOwn({
  protocols,
  isUsed,
  learnt,
}: {
  readonly protocols: readonly Protocol[]
  readonly isUsed: boolean
  readonly learnt: readonly RateRow[]
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const survivalOf = ({ protocol, step }: RateRow) =>
    protocols.find(({ id }) => id === protocol)?.steps.find(({ id }) => id === step)?.survival
  return (
    <section className="sheet stack">
      <div>
        <h2>{t('methods.own.title')}</h2>
        <p className="soft small">
          {t(learnt.length > 0 ? 'methods.own.says' : isUsed ? 'methods.own.none' : 'methods.own.unused')}
        </p>
      </div>
      {learnt.length > 0 && (
        <>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
          <section className="method-scroll" tabIndex={0} aria-label={t('methods.own.title')}>
            <table>
              <thead>
                <tr>
                  <th>{t('methods.own.kind')}</th>
                  <th className="number">{t('methods.own.yours')}</th>
                  <th className="number">{t('methods.own.builtIn')}</th>
                  <th className="number">{t('methods.own.batches')}</th>
                </tr>
              </thead>
              <tbody>
                {tellingRates(learnt).map(row => {
                  const survival = survivalOf(row)
                  return (
                    <tr key={`${row.kind} ${row.protocol} ${row.step}`}>
                      <th scope="row">
                        {row.kindName ?? term(row.protocolName)}
                        <span className="soft small block">
                          {term(row.stepName)}: {t(`trade.sign.${row.sign}`)}
                        </span>
                      </th>
                      <td className="number" data-name={t('methods.own.yours')}>
                        <strong>{format.share(row.mean)}</strong>
                        <span className="small block">{format.shareRange(row.low, row.high)}</span>
                      </td>
                      <td className="number" data-name={t('methods.own.builtIn')}>
                        {survival !== undefined && (
                          <>
                            {format.share(survival.typical)}
                            <span className="small block">
                              {format.shareRange(survival.low, survival.high)}
                            </span>
                            <span className="small soft block">{term(survival.basis)}</span>
                          </>
                        )}
                      </td>
                      <td className="number" data-name={t('methods.own.batches')}>
                        {format.number(row.batches)}
                        <span className="small soft block">
                          {t('methods.own.counted', {
                            survived: format.number(row.survived),
                            entered: format.number(row.entered),
                          })}
                        </span>
                      </td>
                    </tr>
                  )
                })}
              </tbody>
            </table>
          </section>
          <p>
            <Link to="/rates">{t('methods.own.rates')}</Link>
          </p>
        </>
      )}
      {protocols.length > 0 && (
        <div>
          <h3>{t('methods.own.protocols')}</h3>
          <ul className="method-protocols link-list">
            {protocols.map(({ id, name }) => (
              <li key={id}>
                <Link to="/protocols/$protocol" params={{ protocol: id }}>
                  {term(name)}
                </Link>
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  )
}
