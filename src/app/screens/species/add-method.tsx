import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { allMethods, type Species, wayOf } from '../../../trade/facts/index.ts'
import { type MethodId, ShareFigure } from '../../../trade/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { Pick } from '../../parts/pick.tsx'
import { SpreadFields } from '../../parts/spread-fields.tsx'
import { figureTyped } from '../../text/figure-typed.ts'
import { shownUnit } from '../../text/shown-unit.ts'
import { useTerm } from '../../text/use-term.ts'

/** A method that the facts do not know for a fruit: it is there as soon as the share that succeeds is stated. */
export function AddMethod({ species, onClose }: { readonly species: Species; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const term = useTerm()
  const missing = allMethods().filter(({ method }) => wayOf(species, method) === undefined)
  const [method, setMethod] = useState<MethodId | ''>(missing[0]?.method ?? '')
  const [draft, setDraft] = useState({ low: '', typical: '', high: '', why: '' })
  const shown = shownUnit('share', 'metric')
  const share = ShareFigure.safeParse(figureTyped(draft, shown))
  const why = draft.why.trim()
  const title = t('species.method.title', { fruit: term(species.commonName) })
  if (missing.length === 0)
    return (
      <Leaf title={title} isOpen onClose={onClose}>
        <p>{t('species.method.none')}</p>
      </Leaf>
    )
  const label = missing.find(one => one.method === method)?.label ?? ''
  return (
    <EntryForm
      title={title}
      bodies={
        share.success && why !== ''
          ? [
              {
                kind: 'fact-set/1',
                species: species.id,
                set: { fact: `ways.${method}.success`, value: share.data },
                why,
              },
            ]
          : null
      }
      need={t('common.spread.needShare')}
      told={t('species.method.kept', { method: label, fruit: term(species.commonName) })}
      onClose={onClose}
    >
      <p className="soft">{t('species.method.says')}</p>
      <Pick
        label={t('species.method.pick')}
        value={method}
        options={missing.map(({ method: id, label }) => ({ id, name: label }))}
        onPick={setMethod}
      />
      <SpreadFields unit={shown.unit} typed={draft} onType={next => setDraft({ ...draft, ...next })} />
      <Field label={t('species.set.why')} value={draft.why} onChange={why => setDraft({ ...draft, why })} />
    </EntryForm>
  )
}
