import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { ClimateSaid } from '../../../advice/index.ts'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import type { Shown } from '../../text/shown-unit.ts'
import { useFormat } from '../../text/use-format.tsx'
import { WeatherFile } from './weather-file.tsx'

const months = (climate: ClimateSaid) =>
  climate.kind === 'place'
    ? { coldestMonthCelsius: 3, warmestMonthCelsius: 20 }
    : {
        coldestMonthCelsius: climate.coldestMonthCelsius,
        warmestMonthCelsius: climate.warmestMonthCelsius,
      }

const asKind = (kind: ClimateSaid['kind'], now: ClimateSaid): ClimateSaid => {
  if (kind === now.kind) return now
  if (kind === 'place') return { kind, latitude: 48, heightMetres: 200, sea: 'some way off' }
  if (kind === 'normals')
    return { kind, coldestNightCelsius: -8, coldestInTenYearsCelsius: null, ...months(now) }
  return { kind, yearlyMinimaCelsius: [-8, -6, -11, -7.5, -9, -5, -8.5, -12, -7, -6.5], ...months(now) }
}

const tidy = (value: number): number => Number(value.toPrecision(4))
const listed = (values: readonly number[], { to }: Shown): string =>
  values.map(value => tidy(to(value))).join('  ')

/** A month that is typed makes the months of a file void. */
const withoutMeans = <C extends Exclude<ClimateSaid, { readonly kind: 'place' }>>(climate: C): C => {
  const { monthMeansCelsius: _, ...rest } = climate
  return rest as C
}

/** The climate: usual figures, a record of winters, or latitude and height alone. */
export function AskPlace({
  climate,
  onAsk,
}: {
  readonly climate: ClimateSaid
  readonly onAsk: (climate: ClimateSaid) => void
}) {
  const { t } = useTranslation()
  const { shown } = useFormat()
  const degrees = shown('°C')
  const [minima, setMinima] = useState(
    climate.kind === 'record' ? listed(climate.yearlyMinimaCelsius, degrees) : '',
  )
  const read = (text: string) =>
    text
      .split(/[;\s]+/)
      .filter(part => part !== '')
      .map(part => tidy(degrees.from(Number(part.replace(',', '.').replace('−', '-')))))
  const isRecord = (values: readonly number[]) =>
    values.length >= 5 && values.length <= 300 && values.every(value => value >= -60 && value <= 50)
  const celsius = (
    label: string,
    value: number | null,
    onSay: (value: number | null) => void,
    ifEmpty?: string,
  ) => (
    <NumberAsked
      label={label}
      shown={degrees}
      value={value}
      least={-60}
      most={50}
      {...(ifEmpty === undefined ? {} : { ifEmpty })}
      onSay={onSay}
    />
  )
  return (
    <fieldset>
      <legend>{t('whichTree.groups.place')}</legend>
      <Pick
        label={t('whichTree.climate')}
        value={climate.kind}
        options={(['normals', 'record', 'place'] as const).map(id => ({
          id,
          name: t(`whichTree.climates.${id}`),
        }))}
        onPick={kind => {
          const next = asKind(kind, climate)
          if (next.kind === 'record') setMinima(listed(next.yearlyMinimaCelsius, degrees))
          onAsk(next)
        }}
      />
      <WeatherFile
        onAsk={read => {
          if (read.kind === 'record') setMinima(listed(read.yearlyMinimaCelsius, degrees))
          onAsk(read)
        }}
      />
      {climate.kind === 'normals' && (
        <>
          {celsius(t('whichTree.coldestNight', { unit: degrees.unit }), climate.coldestNightCelsius, value =>
            onAsk({ ...climate, coldestNightCelsius: value ?? 0 }),
          )}
          {celsius(
            t('whichTree.coldestTen', { unit: degrees.unit }),
            climate.coldestInTenYearsCelsius,
            value => onAsk({ ...climate, coldestInTenYearsCelsius: value }),
            t('whichTree.notKnown'),
          )}
        </>
      )}
      {climate.kind === 'record' && (
        <Field
          label={t('whichTree.yearlyMinima', { unit: degrees.unit })}
          placeholder={t('whichTree.minimaHint')}
          value={minima}
          wrong={isRecord(read(minima)) ? undefined : t('whichTree.minimaWrong')}
          onChange={text => {
            setMinima(text)
            const values = read(text)
            if (isRecord(values)) onAsk({ ...climate, yearlyMinimaCelsius: values })
          }}
        />
      )}
      {climate.kind === 'place' ? (
        <>
          <NumberAsked
            label={t('whichTree.latitude')}
            value={climate.latitude}
            least={-66}
            most={66}
            onSay={latitude => onAsk({ ...climate, latitude: latitude ?? 0 })}
          />
          <NumberAsked
            label={t('whichTree.heightAboveSea', { unit: shown('m').unit })}
            shown={shown('m')}
            value={climate.heightMetres}
            least={-400}
            most={4500}
            step={50}
            onSay={heightMetres => onAsk({ ...climate, heightMetres: heightMetres ?? 0 })}
          />
          <Pick
            label={t('whichTree.sea')}
            value={climate.sea}
            options={(['near', 'some way off', 'far'] as const).map(id => ({
              id,
              name: t(`whichTree.seas.${id}`),
            }))}
            onPick={sea => onAsk({ ...climate, sea })}
          />
        </>
      ) : (
        <>
          {celsius(t('whichTree.coldestMonth', { unit: degrees.unit }), climate.coldestMonthCelsius, value =>
            onAsk({ ...withoutMeans(climate), coldestMonthCelsius: value ?? 0 }),
          )}
          {celsius(t('whichTree.warmestMonth', { unit: degrees.unit }), climate.warmestMonthCelsius, value =>
            onAsk({ ...withoutMeans(climate), warmestMonthCelsius: value ?? 0 }),
          )}
        </>
      )}
    </fieldset>
  )
}
