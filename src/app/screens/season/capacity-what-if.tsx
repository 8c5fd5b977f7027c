import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { useNames } from '../../data/use-names.tsx'
import { Choices } from '../../parts/choices.tsx'
import { Field } from '../../parts/field.tsx'
import { Pick } from '../../parts/pick.tsx'
import { SaidSlider } from '../../parts/said-slider.tsx'
import { SupposedAnswer } from '../../parts/supposed-answer.tsx'
import { dayAfter } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { type Able, type CapacityDraft, capacitySupposed, nowOf } from './capacity-draft.ts'

const MOST_HOURS = 60
/** A bench may be tried up to so many times its size. */
const MOST_TIMES = 3
const DAYS_AT_FIRST = 20

/** One bench of a place, or one person with a skill, tried larger, smaller or away. */
export function CapacityWhatIf({
  of,
  id,
  onTry,
  onClose,
}: {
  readonly of: 'place' | 'skill'
  readonly id: string
  /** How much more there would be, m² or hours a week, while it is being moved. */
  readonly onTry: (more: number) => void
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const ables = new Map<string, Able>(
    of === 'place'
      ? [...names.benches.values()]
          .filter(({ place }) => place === id)
          .map(bench => [bench.id, { what: 'bench', bench }])
      : [...names.people.values()]
          .filter(({ skills }) => (skills as readonly string[]).includes(id))
          .map(person => [person.id, { what: 'person', person }]),
  )
  const [chosen, setChosen] = useState([...ables.keys()][0])
  const able = ables.get(chosen ?? '')
  const [draft, setDraft] = useState<CapacityDraft>({ value: able ? nowOf(able) : 0, days: null })
  /** What is asked: the draft once the thumb is let go. */
  const [asked, setAsked] = useState<CapacityDraft | null>(null)
  if (able === undefined) return null

  const now = nowOf(able)
  const isBench = able.what === 'bench'
  const isPart = draft.days !== null
  const perUnit = isBench ? format.areaNumber(1) : 1
  const shown = (value: number) => format.amount(value * perUnit)
  const more = (to: CapacityDraft) =>
    isBench ? to.value - now : (to.value - now) * (able.what === 'person' ? able.person.pace : 1)
  const set = (to: CapacityDraft, isAsked: boolean) => {
    setDraft(to)
    onTry(to.days === null ? more(to) : 0)
    if (isAsked) setAsked(to)
  }
  const pick = (next: string) => {
    setChosen(next)
    setAsked(null)
    setDraft({ value: nowOf(ables.get(next)!), days: null })
    onTry(0)
  }
  const supposed = asked && capacitySupposed(able, asked)
  const label = isBench
    ? t(isPart ? 'suppose.capacity.closed' : 'suppose.capacity.area', { unit: format.areaUnit })
    : t('suppose.capacity.hours')
  return (
    <div className="stack suppose">
      <div className="suppose-asked">
        {ables.size > 1 && (
          <Pick
            label={t(isBench ? 'suppose.capacity.bench' : 'suppose.capacity.person')}
            value={chosen!}
            options={[...ables].map(([key, each]) => ({
              id: key,
              name: each.what === 'bench' ? each.bench.name : each.person.name,
            }))}
            onPick={pick}
          />
        )}
        <Choices
          label={t('suppose.capacity.when')}
          value={isPart ? 'weeks' : 'always'}
          options={(['always', 'weeks'] as const).map(key => ({
            id: key,
            name: t(`suppose.capacity.${key}`),
          }))}
          onPick={key => {
            const from = names.nursery?.today ?? ''
            const days = key === 'weeks' ? { from, to: dayAfter(from, DAYS_AT_FIRST) } : null
            set({ value: isBench && days !== null ? 0 : now, days }, days !== null)
          }}
        />
        {draft.days !== null &&
          (['from', 'to'] as const).map(end => (
            <Field
              key={end}
              label={t(`suppose.capacity.${end}`)}
              type="date"
              value={draft.days![end]}
              onChange={day => set({ ...draft, days: { ...draft.days!, [end]: day } }, true)}
            />
          ))}
        {!isBench && isPart ? (
          <p className="soft">{t('suppose.capacity.away')}</p>
        ) : (
          <>
            <SaidSlider
              label={label}
              said={shown(draft.value)}
              to={isBench ? (isPart ? now : MOST_TIMES * now) : MOST_HOURS}
              step={isBench ? Math.max(0.5, Math.round(now / 40)) : 1}
              value={draft.value}
              onChange={value => set({ ...draft, value }, false)}
              onLetGo={value => set({ ...draft, value }, true)}
            />
            <TypedNumber
              key={`${chosen} ${draft.value}`}
              label={label}
              value={draft.value * perUnit}
              onTyped={value => set({ ...draft, value: value / perUnit }, true)}
            />
          </>
        )}
      </div>
      {supposed === null ? (
        <p className="soft small">{t('suppose.capacity.hint')}</p>
      ) : (
        <SupposedAnswer
          supposed={supposed}
          what={able.what === 'bench' ? able.bench.name : able.person.name}
          onKept={onClose}
        />
      )}
    </div>
  )
}

/** The same number typed: taken when it is left or Enter is pressed. */
function TypedNumber({
  label,
  value,
  onTyped,
}: {
  readonly label: string
  readonly value: number
  readonly onTyped: (value: number) => void
}) {
  const { t } = useTranslation()
  const before = String(Math.round(value * 10) / 10)
  const [said, setSaid] = useState(before)
  const number = Number(said.replace(',', '.'))
  const isNumber = said.trim() !== '' && Number.isFinite(number) && number >= 0
  const take = () => {
    if (isNumber && said !== before) onTyped(number)
  }
  return (
    <Field
      label={label}
      inputMode="decimal"
      value={said}
      wrong={isNumber ? undefined : t('work.needsNumber')}
      onChange={setSaid}
      onBlur={take}
      onKeyDown={event => {
        if (event.key === 'Enter') take()
      }}
    />
  )
}
