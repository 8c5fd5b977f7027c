import { type ReactNode, useId, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'
import type { Line } from './line.ts'
import { Retire } from './retire.tsx'

const AT_FIRST = 12
/** In the address, a form for another one. */
const NEW = 'new'

/** One register of the nursery: what is there, each with its change and its end, and the form for another. */
export function RegisterSection({
  name,
  step,
  title,
  says,
  add,
  lines,
  form,
}: {
  /** Of its forms in the page's address. */
  readonly name: string
  readonly step: number
  readonly title: string
  readonly says: string
  readonly add: string
  readonly lines: readonly Line[]
  /** The form for the thing with this id, or for a new one. */
  readonly form: (id: string | null, close: () => void) => ReactNode
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const id = useId()
  const [opened, open] = useOpened()
  const formOf = openedOf(opened, name)
  const isForm = formOf === NEW || lines.some(line => line.id === formOf)
  const retiring = lines.find(line => line.id === openedOf(opened, `retire ${name}`))
  const [isWhole, setWhole] = useState(false)
  const shown = isWhole ? lines : lines.slice(0, AT_FIRST)
  const more = lines.length - AT_FIRST
  return (
    <section className="sheet stack" aria-labelledby={id}>
      <div>
        <h2 id={id}>
          <span className="step" data-done={lines.length > 0 || undefined}>
            {format.number(step)}
          </span>{' '}
          {title} {lines.length > 0 && <span className="soft">{format.number(lines.length)}</span>}
        </h2>
        <p className="soft small">{says}</p>
      </div>
      {shown.length > 0 && (
        <ul className="register">
          {shown.map(line => (
            <li key={line.id}>
              <span>
                <strong>{line.name}</strong> <span className="soft">{line.says}</span>
              </span>
              <span className="row">
                <Button
                  className="quiet"
                  aria-label={t('nursery.changeOf', { name: line.name })}
                  onPress={() => open(`${name} ${line.id}`)}
                >
                  {t('nursery.change')}
                </Button>
                <Button
                  className="quiet"
                  aria-label={t('nursery.retireOf', { name: line.name })}
                  onPress={() => open(`retire ${name} ${line.id}`)}
                >
                  {t('nursery.retire')}
                </Button>
              </span>
            </li>
          ))}
        </ul>
      )}
      <div className="row">
        <Button className="plain" onPress={() => open(`${name} ${NEW}`)}>
          {add}
        </Button>
        {!isWhole && more > 0 && (
          <Button className="quiet" onPress={() => setWhole(true)}>
            {t('common.more', { count: more, shown: format.number(more) })}
          </Button>
        )}
      </div>
      {isForm && form(formOf === NEW ? null : formOf, () => open(null))}
      {retiring !== undefined && <Retire line={retiring} onClose={() => open(null)} />}
    </section>
  )
}
