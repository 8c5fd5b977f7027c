import { lazy, Suspense, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useOutbox } from '../data/outbox/use-outbox.ts'
import { Leaf } from '../parts/leaf.tsx'
import { useFormat } from '../text/use-format.tsx'

/** It words entries, which takes half as much again as the first view: fetched after it. */
export const fetchOutboxList = () => import('./outbox-list.tsx')
const OutboxList = lazy(async () => ({ default: (await fetchOutboxList()).OutboxList }))

/** Entries of this device that the office does not have yet: always in sight while there are any. */
export function OutboxStatus() {
  const { t } = useTranslation()
  const format = useFormat()
  const { waiting, thrown, link, notKept } = useOutbox()
  const [open, setOpen] = useState(false)
  if (notKept !== null)
    return (
      <p className="status warn" role="alert">
        {t('shell.outbox.notKept', { why: notKept })}
      </p>
    )
  if (waiting.length === 0 && thrown.length === 0 && link !== 'away') return null
  return (
    <div className="status">
      <span className="outbox-dot" data-link={link} aria-hidden="true" />
      <span role="status">
        {waiting.length > 0
          ? t('shell.outbox.some', { count: waiting.length, shown: format.number(waiting.length) })
          : link === 'away'
            ? t('shell.link.away')
            : t('shell.outbox.someThrown', { count: thrown.length, shown: format.number(thrown.length) })}
      </span>
      {waiting.length + thrown.length > 0 && (
        <Button className="quiet" onPress={() => setOpen(true)}>
          {t('shell.outbox.title')}
        </Button>
      )}
      <Leaf title={t('shell.outbox.title')} isOpen={open} onClose={() => setOpen(false)}>
        <Suspense>
          <OutboxList />
        </Suspense>
      </Leaf>
    </div>
  )
}
