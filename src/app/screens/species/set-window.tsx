import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { FactSet } from '../../../record/index.ts'
import type { Fact, Species } from '../../../trade/facts/index.ts'
import type { Hemisphere, Window } from '../../../trade/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { MonthsField } from '../../parts/months-field.tsx'
import { useTerm } from '../../text/use-term.ts'
import { isWindow, monthsOf } from './fact-words.ts'

const unsaid = { condition: '', northMonths: [], southMonths: [] }

/** When a method may begin with this fruit here: the condition, and the months that stand for it. */
export function SetWindow({
  species,
  fact,
  set,
  hemisphere,
  onClose,
}: {
  readonly species: Species
  readonly fact: Fact
  readonly set: FactSet | undefined
  readonly hemisphere: Hemisphere
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const now = set?.set.value ?? fact.value
  const window = isWindow(now) ? now : unsaid
  const [condition, setCondition] = useState(window.condition)
  const [months, setMonths] = useState<readonly number[]>(isWindow(now) ? monthsOf(now, hemisphere) : [])
  const [why, setWhy] = useState(set?.why ?? '')
  const isWhole = why.trim() !== '' && (months.length > 0 || condition.trim() !== '')

  const own: Window = {
    condition: condition.trim(),
    northMonths: hemisphere === 'north' ? months : window.northMonths,
    southMonths: hemisphere === 'south' ? months : window.southMonths,
    basis: 'set by the nursery',
    sources: [],
  }
  return (
    <EntryForm
      title={t('species.set.title')}
      bodies={
        isWhole
          ? [
              {
                kind: 'fact-set/1',
                species: species.id,
                set: { fact: fact.key, value: own },
                why: why.trim(),
              },
            ]
          : null
      }
      need={t('species.set.needWindow')}
      told={t('species.set.kept', { figure: term(fact.name), fruit: term(species.commonName) })}
      onClose={onClose}
    >
      <p>{t('species.set.says', { figure: term(fact.name), fruit: term(species.commonName) })}</p>
      <Field label={t('species.set.condition')} value={condition} onChange={setCondition} />
      <div className="field">
        <span className="field-label">{t('species.set.months')}</span>
        <MonthsField label={t('species.set.months')} months={months} onChange={setMonths} />
      </div>
      <Field label={t('species.set.why')} value={why} onChange={setWhy} />
      <p className="soft small">{t('species.set.follow')}</p>
    </EntryForm>
  )
}
