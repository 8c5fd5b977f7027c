import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { FactSet } from '../../../record/index.ts'
import type { Fact, Species } from '../../../trade/facts/index.ts'
import { FactSaid } from '../../../trade/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { SpreadFields } from '../../parts/spread-fields.tsx'
import { figureTyped, typed } from '../../text/figure-typed.ts'
import { shownUnit } from '../../text/shown-unit.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { figureLine, isFigure } from './fact-words.ts'

/** A figure of the nursery's own for a fact of a fruit, with its reason. */
export function SetFact({
  species,
  fact,
  set,
  onClose,
}: {
  readonly species: Species
  readonly fact: Fact
  readonly set: FactSet | undefined
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const shown = shownUnit(fact.unit, format.units)
  const now = set?.set.value ?? fact.value
  const text = (end: 'low' | 'typical' | 'high') => (isFigure(now) ? typed(shown.to(now[end])) : '')
  const [draft, setDraft] = useState({
    low: text('low'),
    typical: text('typical'),
    high: text('high'),
    why: set?.why ?? '',
  })
  const value = figureTyped(draft, shown)
  const said = FactSaid.safeParse({ fact: fact.key, value })
  const isWhole = said.success && draft.why.trim() !== ''

  return (
    <EntryForm
      title={t('species.set.title')}
      bodies={
        isWhole ? [{ kind: 'fact-set/1', species: species.id, set: said.data, why: draft.why.trim() }] : null
      }
      need={t(fact.unit === 'share' ? 'common.spread.needShare' : 'common.spread.need')}
      told={t('species.set.kept', { figure: term(fact.name), fruit: term(species.commonName) })}
      onClose={onClose}
    >
      <p>{t('species.set.says', { figure: term(fact.name), fruit: term(species.commonName) })}</p>
      {isFigure(fact.value) && (
        <p className="soft small">
          {t('species.facts.given')}: {figureLine(fact.value, fact.unit, format)}. {term(fact.value.basis)}
        </p>
      )}
      <SpreadFields unit={shown.unit} typed={draft} onType={next => setDraft({ ...draft, ...next })} />
      <Field label={t('species.set.why')} value={draft.why} onChange={why => setDraft({ ...draft, why })} />
      {fact.key.startsWith('ways.') && <p className="soft small">{t('species.set.follow')}</p>}
    </EntryForm>
  )
}
