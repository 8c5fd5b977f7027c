import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { Asked } from '../../parts/asked.tsx'
import { StrikeOne } from '../../parts/entry-list.tsx'
import { HoldList } from '../../parts/hold-list.tsx'
import { openedOf, useOpened } from '../../parts/use-opened.ts'
import { VirtualList } from '../../parts/virtual-list.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './checks.css'
import { useTell } from '../../text/use-tell.ts'
import { SettleLeaf } from './settle-leaf.tsx'

/** What does not add up: said as it was, until someone puts it right. */
export function ChecksScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const tell = useTell()
  const [opened, open] = useOpened()
  const queries = useQuery(look.queries())
  const named = (word: string) => queries.data?.find(({ id }) => id === openedOf(opened, word))
  const settling = named('settle')
  const wrong = named('strike')
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
          <VirtualList
            items={rows}
            label={t('settings.checks.title')}
            rowHeight={() => 96}
            keyOf={({ id }) => id}
          >
            {row => {
              const { batch, order, mother, says, raisedBy } = row
              return (
                <div className="check">
                  <div>
                    <p>{tell(says)}</p>
                    {raisedBy !== null && (
                      <p className="soft small">
                        {t('settings.checks.raised', {
                          day: format.fullDay(raisedBy.on),
                          by: raisedBy.by === null ? t('batch.nobody') : names.person(raisedBy.by),
                          says: tell(raisedBy.says),
                        })}
                      </p>
                    )}
                  </div>
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
                    <Button className="quiet" onPress={() => open(`settle ${row.id}`)}>
                      {t('settings.checks.settle')}
                    </Button>
                    <Button className="quiet" onPress={() => open(`strike ${row.id}`)}>
                      {t('settings.checks.strike')}
                    </Button>
                  </div>
                </div>
              )
            }}
          </VirtualList>
          <Holds />
          {settling !== undefined && <SettleLeaf query={settling} onClose={() => open(null)} />}
          {wrong !== undefined && (
            <StrikeOne
              entry={{ id: wrong.entry, says: wrong.raisedBy?.says ?? wrong.says }}
              onClose={() => open(null)}
            />
          )}
        </div>
      )}
    </Asked>
  )
}

/** What is on hold, and below it what was released. */
function Holds() {
  const { t } = useTranslation()
  const { data } = useQuery(look.holds())
  const standing = data?.filter(({ released }) => released === null) ?? []
  const past = data?.filter(({ released }) => released !== null) ?? []
  return (
    <section className="sheet">
      <h2>{t('holds.title')}</h2>
      {standing.length === 0 && <p className="soft">{t('holds.none')}</p>}
      <HoldList holds={standing} />
      {past.length > 0 && (
        <details>
          <summary className="strong">{t('holds.history')}</summary>
          <HoldList holds={past} />
        </details>
      )}
    </section>
  )
}
