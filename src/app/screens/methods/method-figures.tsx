import { useTranslation } from 'react-i18next'
import { citation, guideFigures, sourceById } from '../../../trade/guides/index.ts'
import type { Figure, MethodId, Protocol } from '../../../trade/index.ts'
import { Given } from '../../parts/given.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { inUnits, measureWords } from './measure-words.ts'
import { ownMeasure } from './own-measure.ts'

/** What the program assumes of a method, each with where it comes from; beside it what the nursery's protocols say. */
export function MethodFigures({
  method,
  protocols,
}: {
  readonly method: MethodId
  readonly protocols: readonly Protocol[]
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const figures = guideFigures(method)
  const rows = figures.map(setting => ({
    ...inUnits(setting, format.units),
    own: ownMeasure(protocols, setting.name),
    metric: setting.unit,
  }))
  const hasOwn = rows.some(({ own }) => own !== null)
  const sources = [...new Set(figures.flatMap(({ figure }) => figure.sources))]
  const basisOf = ({ basis, typicalBasis, rangeBasis, note }: Figure): string =>
    [
      typicalBasis !== undefined
        ? t('methods.figures.interpolated')
        : rangeBasis !== undefined
          ? t('methods.figures.rangeRemembered')
          : term(basis),
      note,
    ]
      .filter(Boolean)
      .join('. ')
  return (
    <section className="sheet stack">
      <div>
        <h2>{t('methods.figures.title')}</h2>
        <p className="soft small">{t('methods.figures.says')}</p>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <section className="method-scroll" tabIndex={0} aria-label={t('methods.figures.title')}>
        <table>
          <thead>
            <tr>
              <th>{t('methods.figures.measure')}</th>
              <th className="number">{t('methods.figures.typical')}</th>
              <th className="number">{t('methods.figures.range')}</th>
              {hasOwn && <th className="number">{t('methods.figures.own')}</th>}
              <th>{t('methods.figures.basis')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, unit, figure, own, metric }) => {
              const { typical, range } = measureWords(figure, format.locale)
              return (
                <tr key={name}>
                  <th scope="row">
                    <Given says={name} />
                    {unit !== '' && (
                      <span className="soft">
                        {' '}
                        <Given says={unit} />
                      </span>
                    )}
                  </th>
                  <td className="number strong" data-name={t('methods.figures.typical')}>
                    {metric === 'ppm' ? '' : typical}
                  </td>
                  <td className="number" data-name={t('methods.figures.range')}>
                    {range}
                  </td>
                  {hasOwn && (
                    <td className="number" data-name={t('methods.figures.own')}>
                      {own === null
                        ? ''
                        : measureWords(
                            inUnits({ name, unit: metric, figure: own }, format.units).figure,
                            format.locale,
                          ).range}
                    </td>
                  )}
                  <td className="small" data-name={t('methods.figures.basis')}>
                    {basisOf(figure)}
                    {figure.sources.length > 0 && (
                      <span className="soft">
                        {' '}
                        [{format.list(figure.sources.map(id => format.number(sources.indexOf(id) + 1)))}]
                      </span>
                    )}
                  </td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </section>
      {sources.length > 0 && (
        <div>
          <h3>{t('methods.figures.sources')}</h3>
          <ol className="method-sources small">
            {sources.map(id => {
              const source = sourceById(id)
              return <li key={id}>{source === undefined ? id : citation(source)}</li>
            })}
          </ol>
        </div>
      )}
    </section>
  )
}
