import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { BatchId, MotherId } from '../../../trade/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'

/** Stops a batch or mother tree and everything that came from it. */
export function HoldFamily({
  what,
  id,
  name,
  onClose,
}: {
  readonly what: 'batch' | 'mother'
  readonly id: string
  readonly name: string
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const [why, setWhy] = useState('')
  const of = what === 'batch' ? { batch: id as BatchId } : { mother: id as MotherId }
  return (
    <EntryForm
      title={t('lineage.hold')}
      bodies={
        why.trim() === '' ? null : [{ kind: 'hold-placed/1', on: { what: 'lineage', of }, why: why.trim() }]
      }
      need={t('holds.need')}
      told={t('lineage.held', { name })}
      onClose={onClose}
    >
      <Field label={t('lineage.holdWhy')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
