import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Order } from '../../../record/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { draftOf, readDraft, type Wrong } from './order-draft.ts'
import { OrderForm } from './order-form.tsx'

export function ChangeOrder({
  order,
  isOpen,
  onClose,
}: {
  readonly order: Order
  readonly isOpen: boolean
  readonly onClose: () => void
}) {
  const { t } = useTranslation()
  const done = useDone()
  const [draft, setDraft] = useState(() => draftOf(order))
  const [wrong, setWrong] = useState<Wrong>({})
  const keep = async () => {
    const read = readDraft(draft, order)
    if ('wrong' in read) return setWrong(read.wrong)
    const said = await say([{ kind: 'order-changed/1', order: read.order, why: '' }])
    done.tell(t('orders.changed', { order: order.id }), said)
    onClose()
  }
  return (
    <Leaf title={t('orders.changeTitle', { order: order.id })} isOpen={isOpen} onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <OrderForm draft={draft} wrong={wrong} onChange={change => setDraft({ ...draft, ...change })} />
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
