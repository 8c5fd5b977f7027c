import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import type { Line } from './line.ts'

/** The end of a bench, a person's work or a kind: it stays in the record, and is asked for no more. */
export function Retire({ line, onClose }: { readonly line: Line; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const [why, setWhy] = useState('')
  return (
    <EntryForm
      title={t('nursery.retireOf', { name: line.name })}
      bodies={[line.retired(why.trim())]}
      need=""
      told={t('nursery.retired', { name: line.name })}
      keep={t('nursery.retire')}
      onClose={onClose}
    >
      <p className="soft">{t('nursery.retireSays')}</p>
      <Field label={t('common.reason')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
