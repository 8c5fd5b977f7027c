import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { QueryRow } from '../../../api/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { useTell } from '../../text/use-tell.ts'

/** Someone looked into it and says how it stands: an entry, which stays beside the query. */
export function SettleLeaf({ query, onClose }: { readonly query: QueryRow; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const tell = useTell()
  const [how, setHow] = useState('')
  return (
    <EntryForm
      title={t('settings.checks.settle')}
      bodies={how.trim() === '' ? null : [{ kind: 'query-settled/1', query: query.id, how: how.trim() }]}
      need={t('settings.checks.needHow')}
      told={t('settings.checks.settled')}
      onClose={onClose}
    >
      <p>{tell(query.says)}</p>
      <Field label={t('settings.checks.how')} value={how} onChange={setHow} />
    </EntryForm>
  )
}
