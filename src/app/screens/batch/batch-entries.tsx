import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { strike } from '../../data/say.ts'
import { useNames } from '../../data/use-names.ts'
import { useDone } from '../../parts/done.tsx'
import { useFormat } from '../../text/use-format.ts'

/** All that was said of a batch, newest first. A wrong one is struck: it stays to be seen, and counts no more. */
export function BatchEntries({ view }: { readonly view: BatchView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const done = useDone()
  return (
    <section className="sheet">
      <h2>{t('batch.entries')}</h2>
      <ul className="entries">
        {[...view.entries].reverse().map(({ id, on, at, by, says, struck }) => (
          <li key={id} data-struck={struck}>
            <div>
              <p>{struck ? <s>{says}</s> : says}</p>
              <p className="soft small">
                {t('batch.entryMeta', {
                  day: format.fullDay(on),
                  time: at === null ? '' : ` ${at}`,
                  by: by === null ? t('batch.nobody') : names.person(by),
                })}
                {struck && ` · ${t('batch.struck')}`}
              </p>
            </div>
            {!struck && (
              <Button
                className="quiet"
                aria-label={`${t('batch.strike')}: ${says}`}
                onPress={() =>
                  void strike([id], t('batch.strikeWhy')).then(said =>
                    done.tell(t('batch.struckDone', { says }), said),
                  )
                }
              >
                {t('batch.strike')}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}
