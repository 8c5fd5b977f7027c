import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { allMethods, type Species, wayOf } from '../../../trade/facts/index.ts'
import type { MethodId } from '../../../trade/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { Pick } from '../../parts/pick.tsx'
import { shownUnit } from '../../text/shown-unit.ts'
import { figureTyped } from './in-own-units.ts'

/** A method that the facts do not know for a fruit: it is there as soon as the share that succeeds is stated. */
export function AddMethod({ species, onClose }: { readonly species: Species; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const done = useDone()
  const missing = allMethods().filter(({ method }) => wayOf(species, method) === undefined)
  const [method, setMethod] = useState<MethodId | ''>(missing[0]?.method ?? '')
  const [draft, setDraft] = useState({ low: '', typical: '', high: '', why: '' })
  const [isShort, setShort] = useState(false)
  const value = figureTyped(draft, shownUnit('share', 'metric'))
  const isWhole =
    value !== null && value.low >= 0 && value.high <= 1 && draft.why.trim() !== '' && method !== ''

  const keep = async () => {
    if (!isWhole) return setShort(true)
    const set = { fact: `ways.${method}.success`, value }
    const said = await say([{ kind: 'fact-set/1', species: species.id, set, why: draft.why.trim() }])
    if (!said.kept) return
    const label = missing.find(one => one.method === method)!.label
    done.tell(t('species.method.kept', { method: label, fruit: species.commonName }), said)
    onClose()
  }
  return (
    <Leaf title={t('species.method.title', { fruit: species.commonName })} isOpen onClose={onClose}>
      {missing.length === 0 ? (
        <p>{t('species.method.none')}</p>
      ) : (
        <form
          className="stack"
          onSubmit={event => {
            event.preventDefault()
            void keep()
          }}
        >
          <p className="soft">{t('species.method.says')}</p>
          <Pick
            label={t('species.method.pick')}
            value={method}
            options={missing.map(({ method: id, label }) => ({ id, name: label }))}
            onPick={setMethod}
          />
          <div className="form-grid">
            {(['low', 'typical', 'high'] as const).map(end => (
              <Field
                key={end}
                label={`${t(`species.set.${end}`)}, %`}
                inputMode="decimal"
                value={draft[end]}
                onChange={typedIn => setDraft({ ...draft, [end]: typedIn })}
              />
            ))}
          </div>
          <Field
            label={t('species.set.why')}
            value={draft.why}
            onChange={why => setDraft({ ...draft, why })}
          />
          {isShort && !isWhole && (
            <p className="warn" role="alert">
              {t('species.set.needShare')}
            </p>
          )}
          <Button type="submit" className="deed large">
            {t('common.keep')}
          </Button>
        </form>
      )}
    </Leaf>
  )
}
