import { type ReactNode, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useFormat } from '../text/use-format.tsx'

const AT_FIRST = 10

/** A list of sentences: the first ones, and all of them when asked. */
export function SomeOf({
  items,
}: {
  readonly items: readonly { readonly key: string; readonly says: ReactNode }[]
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const [all, setAll] = useState(false)
  const more = items.length - AT_FIRST
  return (
    <>
      <ul className="sentences">
        {(all ? items : items.slice(0, AT_FIRST)).map(({ key, says }) => (
          <li key={key}>{says}</li>
        ))}
      </ul>
      {more > 0 && !all && (
        <Button className="quiet" onPress={() => setAll(true)}>
          {t('common.more', { count: more, shown: format.number(more) })}
        </Button>
      )}
    </>
  )
}
