import { useTranslation } from 'react-i18next'
import { useNames } from '../../data/use-names.tsx'
import { Choices } from '../../parts/choices.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import { SupposedToKeep } from '../../parts/supposed-answer.tsx'
import { useFormat } from '../../text/use-format.tsx'
import {
  type Able,
  type CapacityDraft,
  capacitySupposed,
  forSomeWeeks,
  nameOf,
  nowOf,
} from './capacity-draft.ts'

/** Which bench of a place, or person with a skill, is tried, and how. */
export interface CapacityTried {
  readonly able: string
  readonly draft: CapacityDraft
}

export const asItIs = (able: string, of: Able): CapacityTried => ({
  able,
  draft: { value: nowOf(of), days: null },
})

/** What is tried by dragging the line, as fields, and what it would change. */
export function CapacityWhatIf({
  ables,
  tried: { able: chosen, draft },
  most,
  onTry,
  onClose,
}: {
  readonly ables: ReadonlyMap<string, Able>
  readonly tried: CapacityTried
  readonly most: number
  readonly onTry: (tried: CapacityTried) => void
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const able = ables.get(chosen)!
  const isBench = able.what === 'bench'
  const isPart = draft.days !== null
  const supposed = capacitySupposed(able, draft)
  const set = (to: CapacityDraft) => onTry({ able: chosen, draft: to })
  return (
    <div className="stack suppose">
      <div className="suppose-asked">
        {ables.size > 1 && (
          <Pick
            label={t(isBench ? 'suppose.capacity.bench' : 'suppose.capacity.person')}
            value={chosen}
            options={[...ables].map(([id, each]) => ({ id, name: nameOf(each) }))}
            onPick={id => onTry(asItIs(id, ables.get(id)!))}
          />
        )}
        <Choices
          label={t('suppose.capacity.when')}
          value={isPart ? 'weeks' : 'always'}
          options={(['always', 'weeks'] as const).map(key => ({
            id: key,
            name: t(`suppose.capacity.${key}`),
          }))}
          onPick={key =>
            key === 'weeks'
              ? set(forSomeWeeks(able, names.nursery?.today ?? ''))
              : onTry(asItIs(chosen, able))
          }
        />
        {draft.days !== null &&
          (['from', 'to'] as const).map(end => (
            <Field
              key={end}
              label={t(`suppose.capacity.${end}`)}
              type="date"
              value={draft.days![end]}
              onChange={day => set({ ...draft, days: { ...draft.days!, [end]: day } })}
            />
          ))}
        {!isBench && isPart ? (
          <p className="soft">{t('suppose.capacity.away')}</p>
        ) : (
          <NumberAsked
            label={
              isBench
                ? t(isPart ? 'suppose.capacity.closed' : 'suppose.capacity.area', { unit: format.areaUnit })
                : t('suppose.capacity.hours')
            }
            value={draft.value}
            least={0}
            most={most}
            {...(isBench && { shown: format.shown('m²') })}
            onSay={value => value !== null && set({ ...draft, value })}
          />
        )}
      </div>
      {supposed === null ? (
        <p className="soft small">{t('suppose.capacity.hint')}</p>
      ) : (
        <SupposedToKeep supposed={supposed} what={nameOf(able)} onKept={onClose} />
      )}
    </div>
  )
}
