import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { QueryRow } from '../../../api/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'

/** Someone looked into it and says how it stands: an entry, which stays beside the query. */
export function SettleLeaf({ query, onClose }: { readonly query: QueryRow; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const done = useDone()
  const [how, setHow] = useState('')
  const [isShort, setShort] = useState(false)
  const keep = async () => {
    if (how.trim() === '') return setShort(true)
    const said = await say([{ kind: 'query-settled/1', query: query.id, how: how.trim() }])
    if (!said.kept) return
    done.tell(t('settings.checks.settled'), said)
    onClose()
  }
  return (
    <Leaf title={t('settings.checks.settle')} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <p>{query.says}</p>
        <Field
          label={t('settings.checks.how')}
          value={how}
          onChange={setHow}
          wrong={isShort && how.trim() === '' ? t('settings.checks.needHow') : undefined}
        />
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
