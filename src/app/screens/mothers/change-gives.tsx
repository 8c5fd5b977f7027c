import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import type { Supply } from '../../../record/index.ts'
import { monthsOfSupply } from '../../../trade/facts/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { GivesAsked } from '../../parts/gives-asked.tsx'
import { usualGives } from '../nursery/mother-typed.ts'

/** What a mother tree may give, said anew once it was counted: the plan, and what is left of it, go by it from then on. */
export function ChangeGives({ view, onClose }: { readonly view: MotherView; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const { nursery, kinds } = useNames()
  const { mother } = view.row
  // A supply of no month is one of every month.
  const [gives, setGives] = useState<readonly Supply[]>(() =>
    mother.gives.map(one => (one.months.length > 0 ? one : { ...one, months: monthsOfSupply([]) })),
  )
  const monthless = gives.find(({ months }) => months.length === 0)
  return (
    <EntryForm
      title={`${mother.name}: ${t('mothers.gives')}`}
      bodies={monthless === undefined ? [{ kind: 'mother-set/1', mother: { ...mother, gives } }] : null}
      need={
        monthless === undefined
          ? ''
          : t('mothers.giving.needMonths', { material: t(`trade.material.${monthless.material}`) })
      }
      told={t('mothers.form.kept', { name: mother.name })}
      onClose={onClose}
    >
      <GivesAsked
        gives={gives}
        usually={usualGives(
          { kinds: nursery?.kinds ?? [], protocols: nursery?.protocols ?? [] },
          {
            cultivar: nursery?.cultivars.find(({ id }) => id === mother.cultivar) ?? null,
            stock: kinds.get(mother.rootstockKind ?? '') ?? null,
          },
        )}
        onChange={setGives}
      />
    </EntryForm>
  )
}
