import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Bench } from '../../../record/index.ts'
import { PlaceKind } from '../../../trade/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { areDays, byEnd, type Days } from './days.ts'
import { DaysAsked } from './days-asked.tsx'
import { freeId, isCalled } from './typed.ts'

/** Days on which a part of it, or with null all of it, cannot be used. */
interface Closed extends Days {
  readonly area: number | null
  readonly why: string
}

/** A bench, bed or piece of ground: what kind of place it is, how large, where on the drawing, and when closed. */
export function BenchForm({
  bench,
  onClose,
}: {
  readonly bench: Bench | null
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const benches = useNames().nursery?.benches ?? []
  const [name, setName] = useState(bench?.name ?? '')
  const [place, setPlace] = useState<PlaceKind>(bench?.place ?? 'shade house')
  const [size, setSize] = useState<Readonly<Record<'length' | 'width' | 'area' | 'x' | 'y', number | null>>>({
    length: bench?.lengthMetres ?? null,
    width: bench?.widthMetres ?? null,
    area: bench?.areaSquareMetres ?? null,
    x: bench?.position?.xMetres ?? null,
    y: bench?.position?.yMetres ?? null,
  })
  const metres = format.shown('m')
  const area =
    size.area ??
    (size.length !== null && size.width !== null ? Math.round(size.length * size.width * 100) / 100 : null)
  const [closed, setClosed] = useState<readonly Closed[]>(() =>
    byEnd(bench?.closed ?? []).map(({ areaSquareMetres, ...rest }) => ({
      ...rest,
      area: areaSquareMetres < bench!.areaSquareMetres ? areaSquareMetres : null,
    })),
  )
  const lacks =
    name.trim() === ''
      ? t('nursery.needName')
      : isCalled(name, benches, bench?.id)
        ? t('nursery.taken', { name: name.trim() })
        : area === null
          ? t('nursery.bench.needArea')
          : (size.x === null) !== (size.y === null)
            ? t('nursery.needBoth')
            : closed.every(areDays)
              ? null
              : t('nursery.days.need', { what: t('nursery.bench.closed') })
  const length = (key: keyof typeof size, label: string) => (
    <NumberAsked
      label={`${label}, ${metres.unit}`}
      value={size[key]}
      least={0}
      most={100_000}
      ifEmpty=""
      shown={metres}
      onSay={value => setSize({ ...size, [key]: value })}
    />
  )
  return (
    <EntryForm
      title={bench === null ? t('nursery.bench.add') : t('nursery.changeOf', { name: bench.name })}
      bodies={
        lacks === null
          ? [
              {
                kind: 'bench-set/1',
                bench: Bench.parse({
                  ...bench,
                  id:
                    bench?.id ??
                    freeId(
                      name,
                      benches.map(({ id }) => id),
                    ),
                  name: name.trim(),
                  place,
                  areaSquareMetres: area,
                  lengthMetres: size.length,
                  widthMetres: size.width,
                  closed: closed.map(({ from, to, why, area: part }) => ({
                    from,
                    to,
                    areaSquareMetres: part ?? area,
                    why: why.trim(),
                  })),
                  position: size.x === null || size.y === null ? null : { xMetres: size.x, yMetres: size.y },
                }),
              },
            ]
          : null
      }
      need={lacks ?? ''}
      told={t('nursery.kept', { name: name.trim() })}
      onClose={onClose}
    >
      <Field label={t('nursery.name')} value={name} onChange={setName} />
      <Pick
        label={t('nursery.bench.place')}
        value={place}
        options={PlaceKind.options.map(id => ({ id, name: t(`trade.place.${id}`) }))}
        onPick={setPlace}
      />
      <div className="form-grid">
        {length('length', t('nursery.bench.length'))}
        {length('width', t('nursery.bench.width'))}
        <NumberAsked
          label={t('nursery.bench.area', { unit: format.areaUnit })}
          value={size.area}
          least={0}
          most={1_000_000}
          ifEmpty={t('nursery.bench.areaEmpty')}
          shown={format.shown('m²')}
          onSay={value => setSize({ ...size, area: value })}
        />
      </div>
      <div>
        <p className="soft small">{t('nursery.bench.positionSays')}</p>
        <div className="form-grid">
          {length('x', t('nursery.bench.x'))}
          {length('y', t('nursery.bench.y'))}
        </div>
      </div>
      <DaysAsked
        label={t('nursery.bench.closed')}
        says={t('nursery.bench.closedSays')}
        add={t('nursery.bench.addClosed')}
        rows={closed}
        next={{ from: '', to: '', area: null, why: '' }}
        onChange={setClosed}
      >
        {({ area: part, why }, change) => (
          <div className="form-grid">
            <NumberAsked
              label={t('nursery.bench.closedArea', { unit: format.areaUnit })}
              value={part}
              least={0}
              most={area ?? 1_000_000}
              ifEmpty={t('nursery.bench.closedWhole')}
              shown={format.shown('m²')}
              onSay={value => change({ area: value })}
            />
            <Field label={t('common.reason')} value={why} onChange={next => change({ why: next })} />
          </div>
        )}
      </DaysAsked>
    </EntryForm>
  )
}
