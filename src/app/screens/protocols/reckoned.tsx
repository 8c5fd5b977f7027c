import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Protocol } from '../../../trade/index.ts'
import { Field } from '../../parts/field.tsx'
import { LadderPicture } from '../../pictures/ladder/ladder-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { type CountBack, countBack } from './count-back.ts'

/** What the protocol asks for, counted back from a wish: as it is being written, beside as it is kept. */
export function Reckoned({
  draft,
  kept,
  today,
}: {
  readonly draft: Protocol
  readonly kept: Protocol
  readonly today: string
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const [said, setSaid] = useState({ wanted: '100', percent: '90' })
  const wanted = Number(said.wanted)
  const sure = Number(said.percent.replace(',', '.')) / 100
  const isWish = Number.isInteger(wanted) && wanted >= 1 && wanted <= 1e6 && sure >= 0.5 && sure <= 0.99
  const wish = { wanted, sure, from: today }
  const now = isWish ? countBack(draft, wish) : null
  const before = isWish ? countBack(kept, wish) : null
  const isEdited = before !== null && JSON.stringify(now?.rungs) !== JSON.stringify(before?.rungs)

  const lines: readonly (readonly [string, (one: CountBack) => string])[] = [
    [t('protocols.reckoned.start'), ({ start }) => format.number(start)],
    [
      t('protocols.reckoned.ready'),
      ({ days }) => t('protocols.reckoned.weeks', { shown: format.number(days / 7) }),
    ],
    [t('protocols.reckoned.hands'), ({ minutes }) => format.hours(minutes)],
    [t('protocols.reckoned.bench'), ({ squareMetres }) => format.area(squareMetres)],
  ]
  return (
    <section className="sheet stack reckoned" aria-label={t('protocols.reckoned.title')}>
      <h2>{t('protocols.reckoned.title')}</h2>
      <div className="form-grid">
        <Field
          label={t('protocols.reckoned.wanted')}
          inputMode="numeric"
          value={said.wanted}
          onChange={value => setSaid({ ...said, wanted: value })}
        />
        <Field
          label={t('protocols.reckoned.sure')}
          inputMode="numeric"
          value={said.percent}
          onChange={percent => setSaid({ ...said, percent })}
        />
      </div>
      {!isWish && <p className="warn">{t('protocols.reckoned.wish')}</p>}
      {isWish && now === null && <p className="warn">{t('protocols.reckoned.never')}</p>}
      {now !== null && (
        <>
          <dl className="reckoned-lines" aria-live="polite">
            {lines.map(([name, shown]) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>
                  <strong>{shown(now)}</strong>
                  {before !== null && shown(before) !== shown(now) && (
                    <span className="soft"> {t('protocols.reckoned.was', { shown: shown(before) })}</span>
                  )}
                </dd>
              </div>
            ))}
          </dl>
          <LadderPicture
            title={t('protocols.reckoned.ladder')}
            says={[t('protocols.reckoned.says'), ...(isEdited ? [t('protocols.reckoned.dashed')] : [])].join(
              ' ',
            )}
            rungs={now.rungs.map(rung =>
              rung.step === null ? { ...rung, name: t('protocols.reckoned.end') } : rung,
            )}
            {...(isEdited && { before: before.rungs })}
          />
        </>
      )}
    </section>
  )
}
