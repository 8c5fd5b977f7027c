import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { LotRow } from '../../../api/index.ts'
import { Behind } from '../../parts/behind.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'

/** What was cut and is neither used nor thrown away. */
export function WoodInHand({ lots, today }: { readonly lots: readonly LotRow[]; readonly today: string }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [opened, open] = useOpened()
  const going = lots.find(({ lot }) => lot === openedOf(opened, 'discard'))
  return (
    <div>
      <h3>{t('mothers.wood.title')}</h3>
      {lots.length === 0 && <p className="soft small">{t('mothers.wood.none')}</p>}
      <ul className="sentences">
        {lots.map(lot => (
          <li key={lot.lot} className="row">
            <div>
              <p>
                <Behind name={`lot ${lot.lot}`} says={lot.lot} entries={lot.entries} />:{' '}
                {t('mothers.wood.line', {
                  left: format.amount(lot.left),
                  number: format.amount(lot.number),
                  material: t(`trade.material.${lot.material}`),
                  day: format.fullDay(lot.on),
                  stored: lot.stored,
                })}
              </p>
              {lot.goodUntil !== null && (
                <p className={lot.goodUntil < today ? 'warn small' : 'soft small'}>
                  {t(lot.goodUntil < today ? 'mothers.wood.past' : 'mothers.wood.goodUntil', {
                    day: format.fullDay(lot.goodUntil),
                  })}
                </p>
              )}
            </div>
            <Button
              className="quiet"
              aria-label={`${t('mothers.wood.discard')}: ${lot.lot}`}
              onPress={() => open(`discard ${lot.lot}`)}
            >
              {t('mothers.wood.discard')}
            </Button>
          </li>
        ))}
      </ul>
      {going !== undefined && <Discard lot={going} onClose={() => open(null)} />}
    </div>
  )
}

function Discard({ lot, onClose }: { readonly lot: LotRow; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const [number, setNumber] = useState(String(lot.left))
  const [why, setWhy] = useState('')
  const isGood = Number(number) > 0 && why.trim() !== ''
  return (
    <EntryForm
      title={t('mothers.wood.discardTitle', { label: lot.lot })}
      bodies={
        isGood
          ? [{ kind: 'material-discarded/1', lot: lot.lot, number: Number(number), why: why.trim() }]
          : null
      }
      need={t('batch.deed.need')}
      told={t('mothers.wood.discarded', { number, label: lot.lot })}
      onClose={onClose}
    >
      <Field label={t('mothers.wood.number')} inputMode="decimal" value={number} onChange={setNumber} />
      <Field label={t('mothers.wood.discardWhy')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
