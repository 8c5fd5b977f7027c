import { useState } from 'react'
import { Button } from 'react-aria-components'
import { flushSync } from 'react-dom'
import { useTranslation } from 'react-i18next'
import type { Order } from '../../../record/index.ts'
import { say } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { focusWrong } from '../../parts/focus-wrong.ts'
import { Leaf } from '../../parts/leaf.tsx'
import { draftOf, readDraft } from './order-draft.ts'
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
  const [isTried, setTried] = useState(false)
  const read = readDraft(draft, order)
  const keep = async (form: HTMLFormElement) => {
    if ('wrong' in read) {
      flushSync(() => setTried(true))
      focusWrong(form)
      return
    }
    const said = await say([{ kind: 'order-changed/1', order: read.order, why: '' }])
    if (!said.kept) return
    done.tell(t('orders.changed', { order: order.id }), said)
    onClose()
  }
  return (
    <Leaf title={t('orders.changeTitle', { order: order.id })} isOpen={isOpen} onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep(event.currentTarget)
        }}
      >
        <OrderForm
          draft={draft}
          wrong={isTried && 'wrong' in read ? read.wrong : {}}
          onChange={change => setDraft({ ...draft, ...change })}
        />
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
