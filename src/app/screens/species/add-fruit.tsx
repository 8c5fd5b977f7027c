import { useNavigate } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Fruits } from '../../../trade/facts/index.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useTerm } from '../../text/use-term.ts'
import { newFruit } from './new-fruit.ts'

/** A fruit that the facts do not know, begun from one that is like it. */
export function AddFruit({ fruits, onClose }: { readonly fruits: Fruits; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const term = useTerm()
  const navigate = useNavigate()
  const [draft, setDraft] = useState({ commonName: '', botanical: '', family: '', like: 'apple', why: '' })
  const fruit = newFruit({ ...draft, like: fruits.byId(draft.like)! })
  const isTaken = fruit !== null && fruits.byId(fruit.id) !== undefined
  const why = draft.why.trim()
  const field = (key: 'commonName' | 'botanical' | 'family' | 'why', label: string, isRequired = false) => (
    <Field
      label={label}
      value={draft[key]}
      isRequired={isRequired}
      validationBehavior="aria"
      onChange={text => setDraft({ ...draft, [key]: text })}
    />
  )
  return (
    <EntryForm
      title={t('species.add.title')}
      bodies={
        fruit === null || isTaken || why === '' ? null : [{ kind: 'species-set/1', species: fruit, why }]
      }
      need={t(isTaken ? 'species.add.taken' : 'species.add.need')}
      told={t('species.add.kept', { fruit: draft.commonName.trim() })}
      keep={t('species.add.keep')}
      onKept={() => void navigate({ to: '/species', search: { find: draft.commonName.trim() } })}
      onClose={onClose}
    >
      <p className="soft">{t('species.add.says')}</p>
      {field('commonName', t('species.add.name'), true)}
      {field('botanical', t('species.add.botanical'), true)}
      {field('family', t('species.add.family'))}
      <Pick
        label={t('species.add.like')}
        value={draft.like}
        options={[...fruits.all]
          .sort((a, b) => term(a.commonName).localeCompare(term(b.commonName)))
          .map(({ id, commonName }) => ({ id: id as string, name: term(commonName) }))}
        onPick={like => setDraft({ ...draft, like })}
      />
      {field('why', t('species.set.why'), true)}
    </EntryForm>
  )
}
