import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../data/client.ts'
import { outbox } from '../data/outbox/use-outbox.ts'
import { look } from '../data/queries.ts'
import { useCarried } from '../data/use-carried.ts'
import { Leaf } from '../parts/leaf.tsx'
import { NurseryUnderWay } from '../parts/nursery-under-way.tsx'
import { RefusedLine } from '../parts/refused-line.tsx'

/** What waits on this device belongs to the invented nursery: it goes there first. */
const putAside = async (signal: AbortSignal): Promise<'begun' | 'waiting'> => {
  await outbox.send()
  if (outbox.state().waiting.length > 0) return 'waiting'
  await client.beginOwn(signal)
  return 'begun'
}

/** Says that the nursery shown is the invented one, and how to begin one's own. */
export function InventedLine() {
  const { t } = useTranslation()
  const { data: nursery } = useQuery(look.nursery())
  const [isOpen, setOpen] = useState(false)
  const begin = useCarried(
    (_: null, { signal }) => putAside(signal),
    how => {
      if (how === 'begun') location.assign('/work')
    },
  )
  if (nursery?.isInvented !== true) return null
  const close = () => {
    if (begin.isPending) return
    setOpen(false)
    begin.reset()
  }
  return (
    <div className="invented">
      <span>{t('shell.invented.says')}</span>
      <Button className="quiet" onPress={() => setOpen(true)}>
        {t('shell.invented.begin')}
      </Button>
      <Leaf title={t('shell.invented.begin')} isOpen={isOpen} onClose={close}>
        <div className="stack">
          <p>{t('shell.invented.what')}</p>
          {begin.error !== null && <RefusedLine problem={begin.error} />}
          {begin.data === 'waiting' && (
            <p className="warn" role="alert">
              {t('shell.invented.waiting')}
            </p>
          )}
          {begin.isPending && <NurseryUnderWay says={t('shell.invented.beginning')} onStop={begin.stop} />}
          {begin.isStopped && <p className="soft">{t('settings.putBack.stopped')}</p>}
          <div className="row">
            <Button className="deed" isDisabled={begin.isPending} onPress={() => begin.start(null)}>
              {t('shell.invented.begin')}
            </Button>
            <Button className="plain" isDisabled={begin.isPending} onPress={close}>
              {t('shell.invented.stay')}
            </Button>
          </div>
        </div>
      </Leaf>
    </div>
  )
}
