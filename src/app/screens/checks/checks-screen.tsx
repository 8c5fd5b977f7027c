import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { strike } from '../../data/say.ts'
import { Asked } from '../../parts/asked.tsx'
import { useDone } from '../../parts/done.tsx'
import { VirtualList } from '../../parts/virtual-list.tsx'
import { useFormat } from '../../text/use-format.ts'
import './checks.css'

/** What does not add up: said as it was, until someone puts it right. */
export function ChecksScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const done = useDone()
  const queries = useQuery(look.queries())
  return (
    <Asked query={queries} what={t('settings.checks.title')}>
      {rows => (
        <div className="stack">
          <div>
            <h1>{t('settings.checks.title')}</h1>
            <p className="soft">
              {rows.length === 0
                ? t('settings.checks.none')
                : t('settings.checks.says', { count: rows.length, shown: format.number(rows.length) })}
            </p>
          </div>
          <VirtualList items={rows} label={t('settings.checks.title')} rowHeight={76} keyOf={({ id }) => id}>
            {({ entry, batch, order, mother, says }) => (
              <div className="check">
                <p>{says}</p>
                <div className="row">
                  {batch !== null && (
                    <Link to="/batches/$batch" params={{ batch }} className="quiet">
                      {t('settings.checks.openBatch')}
                    </Link>
                  )}
                  {order !== null && (
                    <Link to="/orders" search={{ order }} className="quiet">
                      {t('settings.checks.openOrder')}
                    </Link>
                  )}
                  {mother !== null && (
                    <Link to="/mothers" search={{ mother }} className="quiet">
                      {t('settings.checks.openMother')}
                    </Link>
                  )}
                  <Button
                    className="quiet"
                    onPress={() =>
                      void strike([entry], t('settings.checks.why')).then(said =>
                        done.tell(t('settings.checks.struck'), said),
                      )
                    }
                  >
                    {t('settings.checks.strike')}
                  </Button>
                </div>
              </div>
            )}
          </VirtualList>
        </div>
      )}
    </Asked>
  )
}
