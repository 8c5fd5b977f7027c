import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import { Mother } from '../../../record/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { measureTyped } from '../../text/measure-typed.ts'
import { useFormat } from '../../text/use-format.tsx'

/** Where a mother tree stands, how old and high it is, where its wood came from, and who saw that it is true to name. */
export function ChangeMother({ view, onClose }: { readonly view: MotherView; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { mother } = view.row
  const metres = (value: number | undefined) => measureTyped(value ?? null, 'm', format)
  const east = metres(mother.position?.xMetres)
  const north = metres(mother.position?.yMetres)
  const high = metres(mother.heightMetres)
  const { unit } = high
  const [said, setSaid] = useState({
    name: mother.name,
    block: mother.block,
    x: east.was,
    y: north.was,
    planted: mother.planted ?? '',
    height: high.was,
    provenance: mother.provenance,
    verifiedBy: mother.verifiedBy ?? '',
  })
  const field = (name: keyof typeof said) => ({
    value: said[name],
    onChange: (value: string) => setSaid({ ...said, [name]: value }),
  })
  const x = east.read(said.x)
  const y = north.read(said.y)
  const height = high.read(said.height)
  const { heightMetres: _, verifiedBy: __, ...rest } = mother
  const changed = Mother.safeParse({
    ...rest,
    name: said.name.trim(),
    block: said.block.trim(),
    position: x === null || y === null ? null : { xMetres: x, yMetres: y },
    planted: said.planted === '' ? null : said.planted,
    provenance: said.provenance.trim(),
    ...(height === null ? {} : { heightMetres: height }),
    ...(said.verifiedBy.trim() === '' ? {} : { verifiedBy: said.verifiedBy.trim() }),
  })

  return (
    <EntryForm
      title={`${mother.name}: ${t('mothers.change')}`}
      bodies={changed.success ? [{ kind: 'mother-set/1', mother: changed.data }] : null}
      need={t('mothers.form.need')}
      told={t('mothers.form.kept', { name: said.name.trim() })}
      onClose={onClose}
    >
      <div className="form-grid">
        <Field label={t('mothers.form.name')} {...field('name')} />
        <Field label={t('mothers.form.block')} {...field('block')} />
        <Field label={t('mothers.form.x', { unit })} inputMode="decimal" {...field('x')} />
        <Field label={t('mothers.form.y', { unit })} inputMode="decimal" {...field('y')} />
        <Field type="date" label={t('mothers.form.planted')} {...field('planted')} />
        <Field label={t('mothers.form.height', { unit })} inputMode="decimal" {...field('height')} />
      </div>
      <Field label={t('mothers.form.provenance')} {...field('provenance')} />
      <Field label={t('mothers.form.verifiedBy')} {...field('verifiedBy')} />
    </EntryForm>
  )
}
