import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Supply } from '../../../record/index.ts'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { GivesAsked } from '../../parts/gives-asked.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { givenIn, motherMade, usualGives } from './mother-typed.ts'
import { isCalled } from './typed.ts'

/** A mother tree: of which cultivar or rootstock, where it stands, and what it may give in a year without harm. */
export function MotherForm({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { nursery } = useNames()
  const { data: rows = [] } = useQuery(look.mothers())
  const ground = {
    cultivars: nursery?.cultivars ?? [],
    kinds: nursery?.kinds ?? [],
    protocols: nursery?.protocols ?? [],
  }
  const among = givenIn(ground)
  const [said, setSaid] = useState({ name: '', block: '', provenance: '', planted: '' })
  const [chosen, setChosen] = useState('')
  const [position, setPosition] = useState<{ readonly x: number | null; readonly y: number | null }>({
    x: null,
    y: null,
  })
  const [gives, setGives] = useState<readonly Supply[]>([])
  const mothers = rows.map(({ mother }) => mother)
  const of = among.find(({ id }) => id === chosen)
  const metres = format.shown('m')
  const monthless = gives.find(({ months }) => months.length === 0)
  const lacks =
    among.length === 0
      ? t('nursery.mother.needKind')
      : of === undefined
        ? t('nursery.mother.needOf')
        : said.name.trim() === ''
          ? t('nursery.needName')
          : isCalled(said.name, mothers, undefined)
            ? t('nursery.taken', { name: said.name.trim() })
            : (position.x === null) !== (position.y === null)
              ? t('nursery.needBoth')
              : monthless !== undefined
                ? t('mothers.giving.needMonths', { material: t(`trade.material.${monthless.material}`) })
                : null
  const made =
    lacks !== null || of === undefined
      ? null
      : motherMade(
          said,
          of,
          {
            position:
              position.x === null || position.y === null
                ? null
                : { xMetres: position.x, yMetres: position.y },
            planted: said.planted === '' ? null : said.planted,
            gives,
          },
          { mothers: mothers.map(({ id }) => id), cultivars: ground.cultivars },
        )
  const text = (key: keyof typeof said, label: string) => (
    <Field label={label} value={said[key]} onChange={value => setSaid({ ...said, [key]: value })} />
  )
  return (
    <EntryForm
      title={t('nursery.mother.add')}
      bodies={
        made === null
          ? null
          : [
              ...(made.cultivar === null
                ? []
                : [{ kind: 'cultivar-set/1' as const, cultivar: made.cultivar }]),
              { kind: 'mother-set/1', mother: made.mother },
            ]
      }
      need={lacks ?? ''}
      told={t('nursery.kept', { name: said.name.trim() })}
      onClose={onClose}
    >
      {among.length === 0 && <p>{t('nursery.mother.needKind')}</p>}
      <Pick
        label={t('nursery.mother.of')}
        value={chosen}
        options={[{ id: '', name: t('nursery.kind.choose') }, ...among.map(({ id, name }) => ({ id, name }))]}
        onPick={id => {
          setChosen(id)
          const next = among.find(one => one.id === id)
          setGives(next === undefined ? [] : usualGives(ground, next))
          if (said.name.trim() === '' && next !== undefined)
            setSaid({
              ...said,
              name: `${next.name} ${mothers.filter(({ name }) => name.startsWith(next.name)).length + 1}`,
            })
        }}
      />
      <div className="form-grid">
        {text('name', t('nursery.name'))}
        {text('block', t('mothers.form.block'))}
        <Field
          type="date"
          label={t('mothers.form.planted')}
          value={said.planted}
          onChange={planted => setSaid({ ...said, planted })}
        />
        {(['x', 'y'] as const).map(axis => (
          <NumberAsked
            key={axis}
            label={`${t(`nursery.mother.${axis}`)}, ${metres.unit}`}
            value={position[axis]}
            least={0}
            ifEmpty=""
            shown={metres}
            onSay={value => setPosition({ ...position, [axis]: value })}
          />
        ))}
      </div>
      {text('provenance', t('mothers.form.provenance'))}
      {of !== undefined && (
        <GivesAsked key={chosen} gives={gives} usually={usualGives(ground, of)} onChange={setGives} />
      )}
    </EntryForm>
  )
}
