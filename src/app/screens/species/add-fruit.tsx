import { useNavigate } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Fruits } from '../../../trade/facts/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { Pick } from '../../parts/pick.tsx'
import { newFruit } from './new-fruit.ts'

/** A fruit that the facts do not know, begun from one that is like it. */
export function AddFruit({ fruits, onClose }: { readonly fruits: Fruits; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const done = useDone()
  const navigate = useNavigate()
  const [draft, setDraft] = useState({ commonName: '', botanical: '', family: '', like: 'apple', why: '' })
  const [isShort, setShort] = useState(false)
  const fruit = newFruit({ ...draft, like: fruits.byId(draft.like)! })
  const isTaken = fruit !== null && fruits.byId(fruit.id) !== undefined
  const isWhole = fruit !== null && !isTaken && draft.why.trim() !== ''

  const keep = async () => {
    if (!isWhole) return setShort(true)
    const said = await say([{ kind: 'species-set/1', species: fruit, why: draft.why.trim() }])
    if (!said.kept) return
    done.tell(t('species.add.kept', { fruit: fruit.commonName }), said)
    onClose()
    void navigate({ to: '/species', search: { find: fruit.commonName } })
  }
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
    <Leaf title={t('species.add.title')} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <p className="soft">{t('species.add.says')}</p>
        {field('commonName', t('species.add.name'), true)}
        {field('botanical', t('species.add.botanical'), true)}
        {field('family', t('species.add.family'))}
        <Pick
          label={t('species.add.like')}
          value={draft.like}
          options={[...fruits.all]
            .sort((a, b) => a.commonName.localeCompare(b.commonName))
            .map(({ id, commonName }) => ({ id: id as string, name: commonName }))}
          onPick={like => setDraft({ ...draft, like })}
        />
        {field('why', t('species.set.why'), true)}
        {isShort && !isWhole && (
          <p className="warn" role="alert">
            {t(isTaken ? 'species.add.taken' : 'species.add.need')}
          </p>
        )}
        <Button type="submit" className="deed large">
          {t('species.add.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
