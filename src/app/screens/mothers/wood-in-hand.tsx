import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { LotRow } from '../../../api/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Drill } from '../../parts/drill.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { useFormat } from '../../text/use-format.tsx'
import type { EntriesAsked } from './entries-asked.ts'

/** What was cut and is neither used nor thrown away. */
export function WoodInHand({
  lots,
  today,
  onAsk,
}: {
  readonly lots: readonly LotRow[]
  readonly today: string
  readonly onAsk: (asked: EntriesAsked) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const [going, setGoing] = useState<LotRow | null>(null)
  return (
    <div>
      <h3>{t('mothers.wood.title')}</h3>
      {lots.length === 0 && <p className="soft small">{t('mothers.wood.none')}</p>}
      <ul className="sentences">
        {lots.map(lot => (
          <li key={lot.lot} className="row">
            <div>
              <p>
                <Drill says={lot.lot} onAsk={says => onAsk({ says, entries: lot.entries })} />:{' '}
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
              onPress={() => setGoing(lot)}
            >
              {t('mothers.wood.discard')}
            </Button>
          </li>
        ))}
      </ul>
      {going !== null && <Discard lot={going} onClose={() => setGoing(null)} />}
    </div>
  )
}

function Discard({ lot, onClose }: { readonly lot: LotRow; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const done = useDone()
  const [number, setNumber] = useState(String(lot.left))
  const [why, setWhy] = useState('')
  const [isShort, setShort] = useState(false)
  const isGood = Number(number) > 0 && why.trim() !== ''
  const keep = async () => {
    if (!isGood) return setShort(true)
    const said = await say([
      { kind: 'material-discarded/1', lot: lot.lot, number: Number(number), why: why.trim() },
    ])
    if (!said.kept) return
    done.tell(t('mothers.wood.discarded', { number, label: lot.lot }), said)
    onClose()
  }
  return (
    <Leaf title={t('mothers.wood.discardTitle', { label: lot.lot })} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <Field label={t('mothers.wood.number')} inputMode="decimal" value={number} onChange={setNumber} />
        <Field label={t('mothers.wood.discardWhy')} value={why} onChange={setWhy} />
        {isShort && !isGood && (
          <p className="warn" role="alert">
            {t('batch.deed.need')}
          </p>
        )}
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
