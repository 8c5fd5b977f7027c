import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { RateRow } from '../../../api/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { readShares } from './read-shares.ts'

/** Overrules a rate, with its reason. */
export function SetRate({ row, onClose }: { readonly row: RateRow; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const done = useDone()
  const percent = (share: number) => String(Math.round(1000 * share) / 10)
  const [draft, setDraft] = useState({
    low: percent(row.low),
    typical: percent(row.mean),
    high: percent(row.high),
    why: '',
  })
  const [isShort, setShort] = useState(false)
  const shares = readShares(draft)
  const kind = row.kindName ?? t('rates.anyKind')

  const keep = async () => {
    if (shares === null) return setShort(true)
    const said = await say([
      {
        kind: 'rate-set/1',
        protocol: row.protocol,
        step: row.step,
        kindOfTree: row.kind,
        survival: { ...shares, basis: 'set by the nursery', sources: [] },
        why: draft.why.trim(),
      },
    ])
    if (!said.kept) return
    done.tell(t('rates.kept', { step: row.stepName, kind }), said)
    onClose()
  }
  return (
    <Leaf title={t('rates.overruleTitle')} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <p>{t('rates.overruleSays', { kind, step: row.stepName })}</p>
        <p className="soft small">{[row.basis, ...row.sources].join('; ')}</p>
        <div className="form-grid">
          {(['low', 'typical', 'high'] as const).map(key => (
            <Field
              key={key}
              label={t(`rates.${key}`)}
              inputMode="decimal"
              value={draft[key]}
              onChange={value => setDraft({ ...draft, [key]: value })}
            />
          ))}
        </div>
        <Field label={t('rates.why')} value={draft.why} onChange={why => setDraft({ ...draft, why })} />
        {isShort && shares === null && (
          <p className="warn" role="alert">
            {t('rates.need')}
          </p>
        )}
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
