import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import { Mother } from '../../../record/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'

const numberIn = (text: string): number | null => (text.trim() === '' ? null : Number(text.replace(',', '.')))

/** Where a mother tree stands, how old and high it is, where its wood came from, and who saw that it is true to name. */
export function ChangeMother({ view, onClose }: { readonly view: MotherView; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const done = useDone()
  const { mother } = view.row
  const [said, setSaid] = useState({
    name: mother.name,
    block: mother.block,
    x: mother.position === null ? '' : String(mother.position.xMetres),
    y: mother.position === null ? '' : String(mother.position.yMetres),
    planted: mother.planted ?? '',
    height: mother.heightMetres === undefined ? '' : String(mother.heightMetres),
    provenance: mother.provenance,
    verifiedBy: mother.verifiedBy ?? '',
  })
  const [isShort, setShort] = useState(false)
  const field = (name: keyof typeof said) => ({
    value: said[name],
    onChange: (value: string) => setSaid({ ...said, [name]: value }),
  })
  const x = numberIn(said.x)
  const y = numberIn(said.y)
  const height = numberIn(said.height)
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

  const keep = async () => {
    if (!changed.success) return setShort(true)
    const kept = await say([{ kind: 'mother-set/1', mother: changed.data }])
    if (!kept.kept) return
    done.tell(t('mothers.form.kept', { name: changed.data.name }), kept)
    onClose()
  }
  return (
    <Leaf title={`${mother.name}: ${t('mothers.change')}`} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <div className="form-grid">
          <Field label={t('mothers.form.name')} {...field('name')} />
          <Field label={t('mothers.form.block')} {...field('block')} />
          <Field label={t('mothers.form.x')} inputMode="decimal" {...field('x')} />
          <Field label={t('mothers.form.y')} inputMode="decimal" {...field('y')} />
          <Field type="date" label={t('mothers.form.planted')} {...field('planted')} />
          <Field label={t('mothers.form.height')} inputMode="decimal" {...field('height')} />
        </div>
        <Field label={t('mothers.form.provenance')} {...field('provenance')} />
        <Field label={t('mothers.form.verifiedBy')} {...field('verifiedBy')} />
        {isShort && !changed.success && (
          <p className="warn" role="alert">
            {t('mothers.form.need')}
          </p>
        )}
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
