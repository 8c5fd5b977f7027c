import { useQueries, useQuery } from '@tanstack/react-query'
import { useTranslation } from 'react-i18next'
import type { Material } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { Field } from '../../parts/field.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { KindField } from '../orders/kind-field.tsx'
import { type Asks, isPart, type Wood } from './batch-deed.ts'

const SCION: readonly Material[] = ['scion sticks', 'budwood']

/** What a tree is worked over to, and with whose wood: kept in hand, or cut now. Held or retired trees give none. */
export function WoodField({ view, draft, onChange }: Asks) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const { data: rows } = useQuery(look.mothers())
  const cultivars = names.kinds.get(draft.kind ?? '')?.cultivars ?? []
  const mothers = (rows ?? []).filter(
    ({ mother, onHold, retired }) =>
      cultivars.includes(mother.cultivar) && mother.rootstockKind === null && !onHold && !retired,
  )
  const views = useQueries({ queries: mothers.map(({ mother }) => look.mother(mother.id)) })
  const inHand = views
    .flatMap(({ data }) => data?.lots ?? [])
    .filter(({ material }) => SCION.includes(material))
  const woods = [
    ...inHand.map(({ lot, left, material }) => ({
      wood: { from: 'lot', lot } satisfies Wood as Wood,
      name: t('batch.deed.woodInHand', {
        lot,
        left: format.amount(left),
        material: t(`trade.material.${material}`),
      }),
    })),
    ...mothers.flatMap(({ mother }) => {
      const gives = SCION.filter(material => mother.gives.some(given => given.material === material))
      return (gives.length > 0 ? gives : SCION).map(material => ({
        wood: { from: 'mother', mother: mother.id, material } satisfies Wood as Wood,
        name: t('batch.deed.woodOf', { mother: mother.name, material: t(`trade.material.${material}`) }),
      }))
    }),
  ]
  const keyOf = (wood: Wood | null) => (wood === null ? '' : JSON.stringify(wood))
  return (
    <>
      <KindField value={draft.kind} onPick={kind => onChange({ kind, wood: null })} />
      {draft.kind !== null && (
        <Pick
          label={t('batch.deed.wood')}
          value={keyOf(draft.wood)}
          options={[
            { id: '', name: t('batch.deed.noWood') },
            ...woods.map(({ wood, name }) => ({ id: keyOf(wood), name })),
          ]}
          onPick={key => {
            const wood = woods.find(one => keyOf(one.wood) === key)?.wood ?? null
            onChange({ wood, sticks: wood === null ? '' : draft.sticks || draft.number })
          }}
        />
      )}
      {draft.wood !== null && (
        <Field
          label={t('batch.deed.sticks')}
          inputMode="decimal"
          value={draft.sticks}
          onChange={sticks => onChange({ sticks })}
        />
      )}
      {isPart(view, draft.number) && (
        <div>
          <p className="small">{t('batch.deed.inPart')}</p>
          <Field label={t('batch.deed.name')} value={draft.name} onChange={name => onChange({ name })} />
        </div>
      )}
    </>
  )
}
