import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { RateRow } from '../../../api/index.ts'
import { ShareFigure } from '../../../trade/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { SpreadFields } from '../../parts/spread-fields.tsx'
import { figureTyped } from '../../text/figure-typed.ts'
import { shownUnit } from '../../text/shown-unit.ts'

/** Overrules a rate, with its reason. */
export function SetRate({ row, onClose }: { readonly row: RateRow; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const shown = shownUnit('share', 'metric')
  const percent = (share: number) => String(Math.round(1000 * share) / 10)
  const [draft, setDraft] = useState({
    low: percent(row.low),
    typical: percent(row.mean),
    high: percent(row.high),
    why: '',
  })
  const shares = ShareFigure.safeParse(figureTyped(draft, shown))
  const why = draft.why.trim()
  const kind = row.kindName ?? t('rates.anyKind')

  return (
    <EntryForm
      title={t('rates.overruleTitle')}
      bodies={
        shares.success && why !== ''
          ? [
              {
                kind: 'rate-set/1',
                protocol: row.protocol,
                step: row.step,
                kindOfTree: row.kind,
                survival: shares.data,
                why,
              },
            ]
          : null
      }
      need={t('common.spread.needShare')}
      told={t('rates.kept', { step: row.stepName, kind })}
      onClose={onClose}
    >
      <p>{t('rates.overruleSays', { kind, step: row.stepName })}</p>
      <p className="soft small">{[row.basis, ...row.sources].join('; ')}</p>
      <SpreadFields unit={shown.unit} typed={draft} onType={next => setDraft({ ...draft, ...next })} />
      <Field label={t('rates.why')} value={draft.why} onChange={why => setDraft({ ...draft, why })} />
    </EntryForm>
  )
}
