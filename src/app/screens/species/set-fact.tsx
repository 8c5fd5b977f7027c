import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { FactSet } from '../../../record/index.ts'
import type { Fact, Species } from '../../../trade/facts/index.ts'
import { FactSaid } from '../../../trade/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { shownUnit } from '../../text/shown-unit.ts'
import { useFormat } from '../../text/use-format.tsx'
import { figureLine, isFigure } from './fact-words.ts'
import { figureTyped, typed } from './in-own-units.ts'

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
  const format = useFormat()
  const done = useDone()
  const shown = shownUnit(fact.unit, format.units)
  const now = set?.set.value ?? fact.value
  const text = (end: 'low' | 'typical' | 'high') => (isFigure(now) ? typed(shown.to(now[end])) : '')
  const [draft, setDraft] = useState({
    low: text('low'),
    typical: text('typical'),
    high: text('high'),
    why: set?.why ?? '',
  })
  const [isShort, setShort] = useState(false)
  const value = figureTyped(draft, shown)
  const said = FactSaid.safeParse({ fact: fact.key, value })
  const isWhole = said.success && draft.why.trim() !== ''

  const keep = async () => {
    if (!isWhole) return setShort(true)
    const kept = await say([
      { kind: 'fact-set/1', species: species.id, set: said.data, why: draft.why.trim() },
    ])
    if (!kept.kept) return
    done.tell(t('species.set.kept', { figure: fact.name, fruit: species.commonName }), kept)
    onClose()
  }
  return (
    <Leaf title={t('species.set.title')} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <p>{t('species.set.says', { figure: fact.name, fruit: species.commonName })}</p>
        {isFigure(fact.value) && (
          <p className="soft small">
            {t('species.facts.given')}: {figureLine(fact.value, fact.unit, format)}. {fact.value.basis}
          </p>
        )}
        <div className="form-grid">
          {(['low', 'typical', 'high'] as const).map(end => (
            <Field
              key={end}
              label={[t(`species.set.${end}`), shown.unit].filter(Boolean).join(', ')}
              inputMode="decimal"
              value={draft[end]}
              onChange={typedIn => setDraft({ ...draft, [end]: typedIn })}
            />
          ))}
        </div>
        <Field label={t('species.set.why')} value={draft.why} onChange={why => setDraft({ ...draft, why })} />
        {fact.key.startsWith('ways.') && <p className="soft small">{t('species.set.follow')}</p>}
        {isShort && !isWhole && (
          <p className="warn" role="alert">
            {t(fact.unit === 'share' ? 'species.set.needShare' : 'species.set.need')}
          </p>
        )}
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
