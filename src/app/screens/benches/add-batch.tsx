import { useQuery } from '@tanstack/react-query'
import { useId, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { look } from '../../data/queries.ts'
import { Field } from '../../parts/field.tsx'
import { type CountLine, seenIn } from './bench-count-draft.ts'

/** A batch that is seen on the bench and that the record has elsewhere: in the step in which most of it stands. */
export function AddBatch({ onAdd }: { readonly onAdd: (line: CountLine, seen: string) => void }) {
  const { t } = useTranslation()
  const list = useId()
  const { data: batches } = useQuery(look.batchesAlive())
  const [name, setName] = useState('')
  const [seen, setSeen] = useState('')
  const [isShort, setShort] = useState(false)
  const row = batches?.find(batch => batch.name === name.trim())

  const add = async () => {
    if (row === undefined || !seenIn(seen)) return setShort(true)
    const { portions, steps } = await client.batch(row.id)
    const most = [...portions].sort((a, b) => b.number - a.number)[0]
    const step = most?.step ?? ('finished' as CountLine['step'])
    const stepName = steps.find(one => one.step === step)?.name ?? t('trade.finished')
    onAdd({ batch: row.id, name: row.name, kindName: row.kindName, step, stepName, number: 0 }, seen)
    setName('')
    setSeen('')
    setShort(false)
  }
  return (
    <fieldset className="sheet add-batch">
      <legend className="strong">{t('benches.counting.more')}</legend>
      <div className="field">
        <label htmlFor={`${list}-name`}>{t('benches.counting.which')}</label>
        <input
          id={`${list}-name`}
          list={list}
          autoComplete="off"
          value={name}
          onChange={event => setName(event.target.value)}
        />
        <datalist id={list}>
          {batches?.map(batch => (
            <option key={batch.id} value={batch.name}>
              {batch.kindName}
            </option>
          ))}
        </datalist>
      </div>
      <Field label={t('common.number')} inputMode="numeric" value={seen} onChange={setSeen} />
      <Button className="plain" onPress={() => void add()}>
        {t('benches.counting.add')}
      </Button>
      {isShort && (
        <p className="warn" role="alert">
          {t('benches.counting.noBatch')}
        </p>
      )}
    </fieldset>
  )
}
