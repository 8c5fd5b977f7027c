import { useState } from 'react'
import { Button } from 'react-aria-components'
import { flushSync } from 'react-dom'
import { useTranslation } from 'react-i18next'
import { say } from '../../data/say.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { useDone } from '../../parts/done.tsx'
import { focusWrong } from '../../parts/focus-wrong.ts'
import { useFormat } from '../../text/use-format.tsx'
import { nextOrderId, type OrderDraft, readDraft } from './order-draft.ts'
import { OrderForm } from './order-form.tsx'

const empty = (id: string): OrderDraft => ({
  id,
  kind: null,
  number: '',
  due: '',
  earliest: '',
  latest: '',
  buyer: '',
  surePercent: '90',
  price: '',
})

export function OneOrder({ ids }: { readonly ids: readonly string[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const done = useDone()
  const [made, setMade] = useState<readonly string[]>([])
  const [draft, setDraft] = useState(() => empty(nextOrderId(ids)))
  const [isTried, setTried] = useState(false)
  const read = readDraft(draft, { instead: [], placed: deviceDay(), note: '' })

  const keep = async (form: HTMLFormElement) => {
    if ('wrong' in read) {
      flushSync(() => setTried(true))
      focusWrong(form)
      return
    }
    const said = await say([{ kind: 'order-placed/1', order: read.order }])
    if (!said.kept) return
    const { order } = read
    done.tell(
      t('orders.form.kept', {
        order: order.id,
        number: format.number(order.number),
        kind: names.kind(order.kind),
        day: format.day(order.due),
      }),
      said,
    )
    flushSync(() => {
      setMade([...made, order.id])
      setTried(false)
      setDraft(empty(nextOrderId([...ids, ...made, order.id])))
    })
    // The next one is typed at once.
    form.querySelector('input')?.focus()
  }

  return (
    <form
      className="sheet stack"
      aria-labelledby="one-order"
      onSubmit={event => {
        event.preventDefault()
        void keep(event.currentTarget)
      }}
    >
      <h2 id="one-order">
        {t('orders.form.one')} <span className="soft">{draft.id}</span>
      </h2>
      <OrderForm
        key={draft.id}
        draft={draft}
        wrong={isTried && 'wrong' in read ? read.wrong : {}}
        onChange={change => setDraft({ ...draft, ...change })}
      />
      <div>
        <Button type="submit" className="deed large">
          {t('orders.form.keep')}
        </Button>
      </div>
    </form>
  )
}
