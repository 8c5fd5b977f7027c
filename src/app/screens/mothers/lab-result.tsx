import { useNavigate } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import type { Body } from '../../../record/index.ts'
import { Choices } from '../../parts/choices.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { isDayOrEmpty } from './day-text.ts'

const RESULTS = ['clean', 'positive', 'unclear'] as const
const HOLDS = ['family', 'tree', 'none'] as const

/** A laboratory's answer about a mother tree. If it is positive, the hold is offered in the same breath. */
export function LabResult({
  view,
  today,
  onClose,
}: {
  readonly view: MotherView
  readonly today: string
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const navigate = useNavigate()
  const { mother } = view.row
  const [result, setResult] = useState<(typeof RESULTS)[number]>('clean')
  const [hold, setHold] = useState<(typeof HOLDS)[number]>('family')
  const [said, setSaid] = useState({ test: '', laboratory: '', reference: '', on: today, until: '' })
  const isGood =
    said.test.trim() !== '' && said.on !== '' && isDayOrEmpty(said.on) && isDayOrEmpty(said.until)
  const field = (name: keyof typeof said) => ({
    value: said[name],
    onChange: (value: string) => setSaid({ ...said, [name]: value }),
  })

  const holds = result === 'positive' && hold !== 'none'
  const bodies = (): readonly Body[] | null => {
    if (!isGood) return null
    const test = said.test.trim()
    const reference = said.reference.trim()
    const laboratory = said.laboratory.trim()
    const validUntil = said.until === '' ? null : said.until
    const bodies: Body[] = [
      { kind: 'mother-tested/1', mother: mother.id, test, result, laboratory, reference, validUntil },
    ]
    if (holds) {
      const on: Extract<Body, { kind: 'hold-placed/1' }>['on'] =
        hold === 'family'
          ? { what: 'lineage', of: { mother: mother.id } }
          : { what: 'mother', mother: mother.id }
      const why =
        reference === '' ? t('mothers.lab.whyPlain', { test }) : t('mothers.lab.why', { test, reference })
      bodies.push({ kind: 'hold-placed/1', on, why })
    }
    return bodies
  }

  return (
    <EntryForm
      title={`${mother.name}: ${t('mothers.lab.do')}`}
      bodies={bodies()}
      on={said.on}
      onKept={() => {
        if (holds && hold === 'family')
          void navigate({ to: '/lineage/$what/$id/affected', params: { what: 'mother', id: mother.id } })
      }}
      need={t('mothers.lab.need')}
      told={t(holds ? 'mothers.lab.keptHeld' : 'mothers.lab.kept', { name: mother.name })}
      onClose={onClose}
    >
      <Field label={t('mothers.lab.test')} placeholder={t('mothers.lab.testHint')} {...field('test')} />
      <div className="field">
        <span className="field-label">{t('mothers.lab.result')}</span>
        <Choices
          label={t('mothers.lab.result')}
          value={result}
          options={RESULTS.map(id => ({ id, name: t(`mothers.lab.results.${id}`) }))}
          onPick={setResult}
        />
      </div>
      <div className="form-grid">
        <Field type="date" label={t('mothers.lab.on')} {...field('on')} />
        <Field type="date" label={t('mothers.lab.until')} {...field('until')} />
        <Field label={t('mothers.lab.laboratory')} {...field('laboratory')} />
        <Field label={t('mothers.lab.reference')} {...field('reference')} />
      </div>
      {result === 'positive' && (
        <div className="caution stack hold-now">
          <p className="strong">{t('mothers.lab.holdAsk')}</p>
          <Choices
            label={t('mothers.lab.holdAsk')}
            value={hold}
            options={HOLDS.map(id => ({ id, name: t(`mothers.lab.hold.${id}`) }))}
            onPick={setHold}
          />
          <p>{t('mothers.lab.holdSays')}</p>
        </div>
      )}
    </EntryForm>
  )
}
