import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { Person } from '../../../record/index.ts'
import { Skill } from '../../../trade/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { areDays, byEnd, type Days } from './days.ts'
import { DaysAsked } from './days-asked.tsx'
import { Several } from './several.tsx'
import { freeId, isCalled } from './typed.ts'

/** Someone who works here: what they can do, how long in a week, and when they are away. */
export function PersonForm({
  person,
  onClose,
}: {
  readonly person: Person | null
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const people = useNames().nursery?.people ?? []
  const [name, setName] = useState(person?.name ?? '')
  const [skills, setSkills] = useState<readonly Skill[]>(person?.skills ?? ['general'])
  const [time, setTime] = useState<Readonly<Record<'hours' | 'overtime' | 'pace', number | null>>>({
    hours: person?.hoursPerWeek ?? null,
    overtime: person?.overtimeHoursPerWeek ?? 0,
    pace: person?.pace ?? 1,
  })
  const [away, setAway] = useState<readonly Days[]>(() => byEnd(person?.away ?? []))
  const lacks =
    name.trim() === ''
      ? t('nursery.needName')
      : isCalled(name, people, person?.id)
        ? t('nursery.taken', { name: name.trim() })
        : time.hours === null
          ? t('nursery.person.needHours')
          : skills.length === 0
            ? t('nursery.person.needSkill')
            : away.every(areDays)
              ? null
              : t('nursery.days.need', { what: t('nursery.person.away') })
  const number = (key: keyof typeof time, label: string, least: number, most: number) => (
    <NumberAsked
      label={label}
      value={time[key]}
      least={least}
      most={most}
      {...(key === 'hours' && { ifEmpty: '' })}
      onSay={value => setTime({ ...time, [key]: value })}
    />
  )
  return (
    <EntryForm
      title={person === null ? t('nursery.person.add') : t('nursery.changeOf', { name: person.name })}
      bodies={
        lacks === null
          ? [
              {
                kind: 'person-set/1',
                person: Person.parse({
                  ...person,
                  id:
                    person?.id ??
                    freeId(
                      name,
                      people.map(({ id }) => id),
                    ),
                  name: name.trim(),
                  skills,
                  hoursPerWeek: time.hours,
                  overtimeHoursPerWeek: time.overtime ?? 0,
                  pace: time.pace ?? 1,
                  away,
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
      <Several
        label={t('nursery.person.skills')}
        options={Skill.options.map(id => ({ id, name: t(`trade.skill.${id}`) }))}
        chosen={skills}
        onChoose={setSkills}
      />
      <div className="form-grid">
        {number('hours', t('nursery.person.hours'), 0, 120)}
        {number('overtime', t('nursery.person.overtime'), 0, 60)}
        {number('pace', t('nursery.person.pace'), 0.1, 10)}
      </div>
      <p className="soft small">{t('nursery.person.paceSays')}</p>
      <DaysAsked
        label={t('nursery.person.away')}
        says={t('nursery.person.awaySays')}
        add={t('nursery.person.addAway')}
        rows={away}
        next={{ from: '', to: '' }}
        onChange={setAway}
      />
    </EntryForm>
  )
}
