import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { uuidv7 } from 'uuidv7'
import type { MotherView } from '../../../api/index.ts'
import { Material, MaterialLotId } from '../../../trade/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { Given } from '../../parts/given.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { Pick } from '../../parts/pick.tsx'
import { dayAfter } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { isDayOrEmpty } from './day-text.ts'

/** What the facts say of how a material is kept, and how long it is good; cuttings and the like are used at once. */
const keepingFor = ({ keeping, seedKeeping }: MotherView, material: Material): MotherView['keeping'] => {
  if (material === 'seed') return seedKeeping
  return material === 'scion sticks' || material === 'budwood' ? keeping : null
}

/** Wood, cuttings or seed cut from a mother tree and put by: what, how many, how stored, good until when. */
export function WoodCollected({
  view,
  today,
  onClose,
}: {
  readonly view: MotherView
  readonly today: string
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const term = useTerm()
  const { mother, onHold } = view.row
  const given = [...new Set(mother.gives.map(({ material }) => material))]
  const materials = given.length > 0 ? given : Material.options
  const goodUntil = (material: Material, on: string) => {
    const kept = keepingFor(view, material)
    return kept !== null && on !== '' && isDayOrEmpty(on) ? dayAfter(on, Math.round(kept.days)) : ''
  }
  const [material, setMaterial] = useState<Material>(materials[0]!)
  const [said, setSaid] = useState(() => ({
    number: '',
    label: `${mother.id}-${today.slice(5).replace('-', '')}-${uuidv7().slice(-3)}`,
    stored: keepingFor(view, materials[0]!)?.how ?? '',
    on: today,
    until: goodUntil(materials[0]!, today),
  }))
  const number = Number(said.number.replace(',', '.'))
  const lot = MaterialLotId.safeParse(said.label.trim())
  const isGood =
    number > 0 && lot.success && said.on !== '' && isDayOrEmpty(said.on) && isDayOrEmpty(said.until)
  const month = Number(said.on.slice(5, 7))
  const ofMaterial = view.season.filter(one => one.material === material)
  const season =
    ofMaterial.find(({ months }) => months.length === 0 || months.includes(month)) ?? ofMaterial[0]
  const left = season === undefined ? null : season.mayGive - season.given
  const field = (name: keyof typeof said) => ({
    value: said[name],
    onChange: (value: string) => setSaid({ ...said, [name]: value }),
  })
  const pick = (next: Material) => {
    setMaterial(next)
    setSaid({
      ...said,
      stored: keepingFor(view, next)?.how || said.stored,
      until: goodUntil(next, said.on),
    })
  }

  const kept = keepingFor(view, material)
  const title = `${mother.name}: ${t('mothers.wood.do')}`
  if (onHold)
    return (
      <Leaf title={title} isOpen onClose={onClose}>
        <p className="warn strong">{t('mothers.wood.stopped')}</p>
      </Leaf>
    )
  return (
    <EntryForm
      title={title}
      bodies={
        isGood && lot.success
          ? [
              {
                kind: 'material-collected/1',
                lot: lot.data,
                mother: mother.id,
                material,
                number,
                stored: said.stored.trim(),
                goodUntil: said.until === '' ? null : said.until,
              },
            ]
          : null
      }
      on={said.on}
      need={t('mothers.wood.need')}
      told={t('mothers.wood.kept', {
        number: format.amount(number),
        material: t(`trade.material.${material}`),
        name: mother.name,
      })}
      onClose={onClose}
    >
      <div className="form-grid">
        <Pick
          label={t('mothers.wood.material')}
          value={material}
          options={materials.map(id => ({ id, name: t(`trade.material.${id}`) }))}
          onPick={pick}
        />
        <Field label={t('mothers.wood.number')} inputMode="decimal" {...field('number')} />
        <Field type="date" label={t('common.date')} {...field('on')} />
        <Field type="date" label={t('mothers.wood.until')} {...field('until')} />
        <Field label={t('mothers.wood.label')} {...field('label')} />
        <Field label={t('mothers.wood.stored')} {...field('stored')} />
      </div>
      {kept !== null && (
        <p className="soft small">
          {kept.how !== '' && (
            <>
              <Given says={kept.how} />;{' '}
            </>
          )}
          {t('mothers.wood.keeps', { days: format.number(kept.days), basis: term(kept.basis) })}
        </p>
      )}
      {left !== null && (
        <p className={number > left ? 'warn' : 'soft'} aria-live="polite">
          {number > left
            ? t('mothers.wood.over', { over: format.amount(number - Math.max(0, left)) })
            : t('mothers.wood.left', { left: format.amount(Math.max(0, left)) })}
        </p>
      )}
    </EntryForm>
  )
}
