import { useQuery } from '@tanstack/react-query'
import { useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { BatchRow } from '../../../api/index.ts'
import type { BatchId } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { useTerm } from '../../text/use-term.ts'

/** Another living batch, by its name; those of the same kind are offered. */
export function IntoField({
  row,
  onPick,
}: {
  readonly row: BatchRow
  readonly onPick: (batch: BatchId | null) => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const id = useId()
  const { data: batches } = useQuery(look.batchesAlive())
  const [said, setSaid] = useState('')
  const others = (batches ?? []).filter(batch => batch.id !== row.id)
  const found = others.find(({ name }) => name === said.trim())
  return (
    <div className="field">
      <label htmlFor={id}>{t('batch.deed.into')}</label>
      <input
        id={id}
        list={`${id}-batches`}
        autoComplete="off"
        value={said}
        onChange={event => {
          setSaid(event.target.value)
          onPick(others.find(({ name }) => name === event.target.value.trim())?.id ?? null)
        }}
      />
      <datalist id={`${id}-batches`}>
        {others
          .filter(({ kind }) => kind === row.kind)
          .map(batch => (
            <option key={batch.id} value={batch.name}>
              {term(batch.stage)}
            </option>
          ))}
      </datalist>
      {said.trim() !== '' && found === undefined && <p className="warn small">{t('batch.deed.noBatch')}</p>}
      {found !== undefined && found.kind !== row.kind && (
        <p className="warn small">{t('batch.deed.otherKind', { kind: found.kindName })}</p>
      )}
    </div>
  )
}
