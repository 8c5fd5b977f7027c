import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { outbox, useOutbox } from '../data/outbox/use-outbox.ts'
import { RefusedSaid } from '../parts/refused-line.tsx'
import { useFormat } from '../text/use-format.tsx'
import { useSayBody } from './use-say-body.ts'

/** Every entry that waits, in the order in which it will go, and why one was refused. */
export function OutboxList() {
  const { t } = useTranslation()
  const format = useFormat()
  const { waiting, thrown, link } = useOutbox()
  const sayBody = useSayBody()
  return (
    <div className="stack">
      {link === 'away' && <p>{t('shell.outbox.away')}</p>}
      {waiting.length === 0 && <p>{t('shell.outbox.none')}</p>}
      <ol className="outbox-list">
        {waiting.map(({ place, entry, refused }) => (
          <li key={place}>
            <span className="soft small">
              {t('shell.outbox.madeAt', { day: format.day(entry.on), time: entry.at ?? '' })}
            </span>
            <span>{sayBody(entry.body)}</span>
            {refused !== null && (
              <span className="warn">
                {t('shell.outbox.refused')} <RefusedSaid refusal={refused} />
                <Button className="quiet" onPress={() => void outbox.discard(place)}>
                  {t('shell.outbox.discard')}
                </Button>
              </span>
            )}
          </li>
        ))}
      </ol>
      {thrown.length > 0 && (
        <>
          <h3>{t('shell.outbox.thrown')}</h3>
          <ul className="outbox-list">
            {thrown.map(({ place, entry }) => (
              <li key={place}>
                <span className="soft small">
                  {t('shell.outbox.madeAt', { day: format.day(entry.on), time: entry.at ?? '' })}
                </span>
                <span>
                  {sayBody(entry.body)}{' '}
                  <Button className="quiet" onPress={() => void outbox.putBack(place)}>
                    {t('shell.outbox.putBack')}
                  </Button>
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      <p>
        <Button className="plain" onPress={() => void outbox.send()} isDisabled={link === 'sending'}>
          {t(link === 'sending' ? 'shell.outbox.sending' : 'shell.outbox.sendNow')}
        </Button>
      </p>
    </div>
  )
}
