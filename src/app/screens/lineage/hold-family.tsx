import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchId, MotherId } from '../../../trade/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { Leaf } from '../../parts/leaf.tsx'

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
  const done = useDone()
  const [why, setWhy] = useState('')
  const keep = async () => {
    if (why.trim() === '') return
    const of = what === 'batch' ? { batch: id as BatchId } : { mother: id as MotherId }
    const said = await say([{ kind: 'hold-placed/1', on: { what: 'lineage', of }, why: why.trim() }])
    if (!said.kept) return
    done.tell(t('lineage.held', { name }), said)
    onClose()
  }
  return (
    <Leaf title={t('lineage.hold')} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <Field label={t('lineage.holdWhy')} value={why} onChange={setWhy} isRequired />
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
