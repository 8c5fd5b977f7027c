import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Prices } from '../../../record/index.ts'
import { PlaceKind } from '../../../trade/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** What an hour, a square metre, a late and a missing tree cost: the plan weighs by them. */
export function PricesForm({ prices, onClose }: { readonly prices: Prices; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { nursery } = useNames()
  const [said, setSaid] = useState(prices)
  const places = PlaceKind.options.filter(
    place =>
      said.extraSquareMetreWeek[place] !== undefined || nursery?.benches.some(bench => bench.place === place),
  )
  const money = (key: 'hour' | 'overtimeHour', label: string) => (
    <NumberAsked
      label={label}
      value={said[key]}
      least={0}
      onSay={value => value !== null && setSaid({ ...said, [key]: value })}
    />
  )
  const share = (key: 'latePerWeekShare' | 'shortShare', label: string) => (
    <NumberAsked
      label={label}
      value={said[key]}
      least={0}
      most={10}
      shown={format.shown('share')}
      onSay={value => value !== null && setSaid({ ...said, [key]: value })}
    />
  )
  const area = format.shown('a m²')
  return (
    <EntryForm
      title={t('nursery.prices.title')}
      bodies={[{ kind: 'prices-set/1', prices: said }]}
      need=""
      told={t('nursery.prices.kept')}
      onClose={onClose}
    >
      <p className="soft">{t('nursery.prices.says')}</p>
      <div className="form-grid">
        {money('hour', t('nursery.prices.hour'))}
        {money('overtimeHour', t('nursery.prices.overtime'))}
        <NumberAsked
          label={t('nursery.prices.area', { unit: format.areaUnit })}
          value={said.squareMetreWeek}
          least={0}
          shown={area}
          onSay={value => value !== null && setSaid({ ...said, squareMetreWeek: value })}
        />
        {share('latePerWeekShare', t('nursery.prices.late'))}
        {share('shortShare', t('nursery.prices.short'))}
      </div>
      {places.length > 0 && (
        <fieldset className="stack gives">
          <legend>{t('nursery.prices.extra', { unit: format.areaUnit })}</legend>
          <div className="form-grid">
            {places.map(place => (
              <NumberAsked
                key={place}
                label={t(`trade.place.${place}`)}
                value={said.extraSquareMetreWeek[place] ?? null}
                least={0}
                ifEmpty={t('nursery.prices.cannot')}
                shown={area}
                onSay={value => {
                  const { [place]: _, ...others } = said.extraSquareMetreWeek
                  setSaid({
                    ...said,
                    extraSquareMetreWeek: value === null ? others : { ...others, [place]: value },
                  })
                }}
              />
            ))}
          </div>
        </fieldset>
      )}
    </EntryForm>
  )
}
