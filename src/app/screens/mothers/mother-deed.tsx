import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import type { Body } from '../../../record/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'

const DONE = {
  observe: 'mothers.observed',
  hold: 'mothers.held',
  retire: 'mothers.retiredDone',
} as const
const ASKS = { observe: 'mothers.health', hold: 'mothers.holdWhy', retire: 'mothers.retireWhy' } as const

/** Says what a mother tree looks like, or stops it from giving. */
export function MotherDeed({
  view: {
    row: { mother },
  },
  deed,
  onClose,
}: {
  readonly view: MotherView
  readonly deed: 'observe' | 'hold' | 'retire'
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const [words, setWords] = useState('')
  const [bbch, setBbch] = useState('')
  const isGood =
    deed !== 'observe'
      ? words.trim() !== ''
      : (bbch === '' || /^\d\d$/.test(bbch)) && (words.trim() !== '' || bbch !== '')

  const body: Body =
    deed === 'retire'
      ? { kind: 'mother-retired/1', mother: mother.id, why: words.trim() }
      : deed === 'hold'
        ? { kind: 'hold-placed/1', on: { what: 'mother', mother: mother.id }, why: words.trim() }
        : {
            kind: 'mother-observed/1',
            mother: mother.id,
            bbch: bbch === '' ? null : bbch,
            health: words.trim(),
          }
  return (
    <EntryForm
      title={`${mother.name}: ${t(`mothers.${deed}`)}`}
      bodies={isGood ? [body] : null}
      need={t(deed === 'observe' ? 'mothers.need' : 'holds.need')}
      told={t(DONE[deed], { name: mother.name })}
      onClose={onClose}
    >
      {deed === 'observe' && (
        <Field label={t('mothers.bbch')} inputMode="numeric" value={bbch} onChange={setBbch} />
      )}
      <Field
        label={t(ASKS[deed])}
        {...(deed === 'observe' ? { placeholder: t('mothers.healthHint') } : {})}
        value={words}
        onChange={setWords}
      />
    </EntryForm>
  )
}
