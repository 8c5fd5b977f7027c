import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { FactSet } from '../../../record/index.ts'
import type { Fact, Species } from '../../../trade/facts/index.ts'
import type { Hemisphere } from '../../../trade/index.ts'
import { strike } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { figureLine, figureWords, isFigure, isWindow, monthsOf } from './fact-words.ts'
import { SetFact } from './set-fact.tsx'
import { SetWindow } from './set-window.tsx'

/** Facts of a fruit, each with basis and source, beside what the nursery states instead. */
export function FactTable({
  species,
  facts,
  sets,
  sources,
  hemisphere,
  label,
}: {
  readonly species: Species
  /** As they were before the nursery stated its own. */
  readonly facts: readonly Fact[]
  readonly sets: ReadonlyMap<string, FactSet>
  /** Ids of sources in the order of their numbers on the page. */
  readonly sources: readonly string[]
  readonly hemisphere: Hemisphere
  readonly label: string
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const done = useDone()
  const [opened, open] = useOpened()
  const chosen = facts.find(({ key }) => key === openedOf(opened, 'figure'))
  const hasOwn = facts.some(({ key }) => sets.has(key))

  const words = (fact: Fact, value: Fact['value']) => {
    if (isWindow(value)) {
      const months = monthsOf(value, hemisphere)
      return months.length === 0
        ? t('species.facts.anyMonth', { condition: format.sentence(value.condition) })
        : t('species.facts.months', {
            months: format.months(months),
            condition: format.sentence(value.condition),
          })
    }
    return value === null ? t('species.facts.unknown') : figureLine(value, fact.unit, format)
  }
  const basis = (value: Fact['value']): string => {
    if (value === null) return ''
    const interpolated = 'typicalBasis' in value && value.typicalBasis !== undefined
    const remembered = 'rangeBasis' in value && value.rangeBasis !== undefined
    const of = interpolated
      ? t('methods.figures.interpolated')
      : remembered
        ? t('methods.figures.rangeRemembered')
        : term(value.basis)
    return format.sentence([of, value.note].filter(Boolean).join('. '))
  }
  const strikeOwn = async (fact: Fact, set: FactSet) => {
    const said = await strike([set.entry], t('species.facts.strike'))
    done.tell(t('species.set.struck', { figure: term(fact.name), fruit: term(species.commonName) }), said)
  }

  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <section className="method-scroll" tabIndex={0} aria-label={label}>
        <table className="fact-table">
          <thead>
            <tr>
              <th>{t('species.facts.measure')}</th>
              <th className="number">{t('species.facts.given')}</th>
              <th className="number">{t('species.facts.range')}</th>
              <th>{t('species.facts.basis')}</th>
              {hasOwn && <th>{t('species.facts.yours')}</th>}
              <th>
                <span className="unseen">{t('species.facts.overrule')}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {facts.map(fact => {
              const { key, name, unit, value } = fact
              const shown = format.shown(unit)
              const figure = isFigure(value) ? figureWords(value, shown, format.locale) : null
              const set = sets.get(key)
              return (
                <tr key={key} data-stated={set !== undefined}>
                  <th scope="row">
                    {term(name)}
                    {shown.unit !== '' && <span className="soft"> {shown.unit}</span>}
                  </th>
                  {figure === null ? (
                    <td colSpan={2} className="whole">
                      {words(fact, value)}
                    </td>
                  ) : (
                    <>
                      <td className="number strong" data-name={t('species.facts.given')}>
                        {unit === 'ppm' ? '' : figure.typical}
                      </td>
                      <td className="number" data-name={t('species.facts.range')}>
                        {figure.range}
                      </td>
                    </>
                  )}
                  <td className="small">
                    {basis(value)}
                    {value !== null && value.sources.length > 0 && (
                      <span className="soft">
                        {' '}
                        [{format.list(value.sources.map(id => format.number(sources.indexOf(id) + 1)))}]
                      </span>
                    )}
                  </td>
                  {hasOwn && (
                    <td className="small">
                      {set !== undefined && (
                        <>
                          <strong>{words(fact, set.set.value)}</strong>
                          <span className="soft block">
                            {t('species.facts.because', { why: set.why, day: format.fullDay(set.on) })}
                          </span>
                        </>
                      )}
                    </td>
                  )}
                  <td className="fact-deeds">
                    <Button
                      className="quiet"
                      aria-label={`${t(set === undefined ? 'species.facts.overrule' : 'species.facts.change')}: ${term(name)}`}
                      onPress={() => open(`figure ${fact.key}`)}
                    >
                      {t(set === undefined ? 'species.facts.overrule' : 'species.facts.change')}
                    </Button>
                    {set !== undefined && (
                      <Button
                        className="quiet"
                        aria-label={`${t('species.facts.strike')}: ${term(name)}`}
                        onPress={() => void strikeOwn(fact, set)}
                      >
                        {t('species.facts.strike')}
                      </Button>
                    )}
                  </td>
                </tr>
              )
            })}
          </tbody>
        </table>
      </section>
      {chosen !== undefined &&
        (chosen.key.endsWith('.window') ? (
          <SetWindow
            species={species}
            fact={chosen}
            set={sets.get(chosen.key)}
            hemisphere={hemisphere}
            onClose={() => open(null)}
          />
        ) : (
          <SetFact species={species} fact={chosen} set={sets.get(chosen.key)} onClose={() => open(null)} />
        ))}
    </>
  )
}
