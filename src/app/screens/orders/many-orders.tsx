import { useId, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Body } from '../../../record/index.ts'
import type { KindId, OrderId } from '../../../trade/index.ts'
import { say } from '../../data/say.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { Choices } from '../../parts/choices.tsx'
import { useDone } from '../../parts/done.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { datesAround, nextOrderId } from './order-draft.ts'
import { readPasted } from './read-pasted.ts'

/** Whether dates of this reader begin with the day. */
const isDayFirst = (locale: string): boolean =>
  new Intl.DateTimeFormat(locale).formatToParts(0).findIndex(({ type }) => type === 'day') <
  new Intl.DateTimeFormat(locale).formatToParts(0).findIndex(({ type }) => type === 'month')

export function ManyOrders({ ids }: { readonly ids: readonly string[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const done = useDone()
  const field = useId()
  const [text, setText] = useState('')
  const [dayFirst, setDayFirst] = useState(() => isDayFirst(format.locale))
  const { orders, troubles } = readPasted(text, names.nursery?.kinds ?? [], dayFirst)

  const keep = async () => {
    const taken = [...ids]
    const bodies = orders.map((read): Body => {
      const id = nextOrderId(taken)
      taken.push(id)
      return {
        kind: 'order-placed/1',
        order: {
          id: id as OrderId,
          kind: read.kind as KindId,
          number: read.number,
          due: read.due,
          ...datesAround(read.due),
          buyer: read.buyer,
          sure: read.sure,
          instead: [],
          price: null,
          placed: deviceDay(),
          note: '',
        },
      }
    })
    const said = await say(bodies)
    if (!said.kept) return
    done.tell(t('orders.form.keptMany', { count: bodies.length, shown: format.number(bodies.length) }), said)
    setText('')
  }

  return (
    <section className="sheet stack">
      <h2>{t('orders.form.many')}</h2>
      <div className="field">
        <label htmlFor={field}>{t('orders.form.paste')}</label>
        <textarea
          id={field}
          rows={6}
          value={text}
          onChange={event => setText(event.target.value)}
          aria-describedby={`${field}-hint`}
        />
        <p id={`${field}-hint`} className="soft small">
          {t('orders.form.pasteHint')}
        </p>
      </div>
      <div className="row">
        <span className="field-label">{t('orders.form.dayFirst')}</span>
        <Choices
          label={t('orders.form.dayFirst')}
          value={dayFirst ? 'day' : 'month'}
          options={[
            { id: 'day', name: t('orders.form.dayFirstYes') },
            { id: 'month', name: t('orders.form.dayFirstNo') },
          ]}
          onPick={id => setDayFirst(id === 'day')}
        />
      </div>
      {troubles.length > 0 && (
        <ul className="warn" role="status">
          {troubles.map(({ row, what, said }) => (
            <li key={row}>{t(`orders.form.wrong.${what}`, { row: format.number(row), said })}</li>
          ))}
        </ul>
      )}
      {orders.length > 0 && (
        <>
          <table>
            <caption className="unseen">{t('orders.form.preview')}</caption>
            <thead>
              <tr>
                <th scope="col">{t('orders.column.kind')}</th>
                <th scope="col" className="number">
                  {t('orders.column.number')}
                </th>
                <th scope="col">{t('orders.column.due')}</th>
                <th scope="col">{t('orders.column.buyer')}</th>
                <th scope="col" className="number">
                  {t('orders.form.sure')}
                </th>
              </tr>
            </thead>
            <tbody>
              {orders.map(order => (
                <tr key={order.row}>
                  <td>{names.kind(order.kind)}</td>
                  <td className="number">{format.number(order.number)}</td>
                  <td>{format.fullDay(order.due)}</td>
                  <td>{order.buyer || t('orders.own')}</td>
                  <td className="number">{format.share(order.sure)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <div>
            <Button className="deed large" onPress={() => void keep()}>
              {t('orders.form.keepMany', { count: orders.length, shown: format.number(orders.length) })}
            </Button>
          </div>
        </>
      )}
    </section>
  )
}
