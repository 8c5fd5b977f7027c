import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Fragment } from 'react'
import { useTranslation } from 'react-i18next'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { isUnsure } from '../../pictures/chance/unsure.ts'
import { useFormat } from '../../text/use-format.tsx'
import { isOpen } from '../orders/chosen-orders.ts'
import { nearWindows } from './near-windows.ts'
import { Watched } from './watched.tsx'

/** What wants eyes rather than hands: what does not add up, what is unsure, what closes and what opens. */
export function NeedsLook() {
  const { t } = useTranslation()
  const format = useFormat()
  const { nursery } = useNames()
  const { data: orders } = useQuery(look.orders())
  const { data: planned } = useQuery(look.plan())
  const { data: watched } = useQuery(look.needsLook())
  const unsure = orders?.filter(row => isOpen(row) && isUnsure(row.chance, row.order.sure)).length ?? 0
  const counts = nursery?.counts
  const inUse = new Set(nursery?.kinds.flatMap(kind => kind.ways.map(way => way.protocol)))
  /** A protocol that serves any fruit is looked at where it is in use. */
  const fruitOf = new Map(
    nursery?.kinds.flatMap(({ species, ways }) => ways.map(({ protocol }) => [protocol, species])),
  )
  const near =
    nursery === undefined
      ? { closing: [], opening: [] }
      : nearWindows(
          nursery.protocols.filter(({ id }) => inUse.has(id)),
          nursery.today,
        )
  const shown = (count: number) => ({ count, shown: format.number(count) })
  const waits = planned?.plan != null && planned.accepted !== planned.plan.id

  return (
    <aside className="needs-look stack" aria-label={t('work.look.title')}>
      <h2>{t('work.look.title')}</h2>
      <ul>
        {(counts?.queries ?? 0) > 0 && (
          <li>
            <Link to="/checks">{t('work.look.queries', shown(counts!.queries))}</Link>
          </li>
        )}
        {unsure > 0 && (
          <li>
            <Link to="/orders" search={{ show: 'risk' }}>
              {t('work.look.risk', shown(unsure))}
            </Link>
          </li>
        )}
        {(counts?.holds ?? 0) > 0 && (
          <li>
            <Link to="/checks">{t('work.look.holds', shown(counts!.holds))}</Link>
          </li>
        )}
        {waits && (
          <li>
            <Link to="/season">{t('work.look.accept')}</Link>
          </li>
        )}
        {(planned?.entriesSince ?? 0) > 0 && (
          <li>
            <Link to="/season">{t('work.look.stale', shown(planned!.entriesSince))}</Link>
          </li>
        )}
        {watched !== undefined &&
          orders !== undefined &&
          planned !== undefined &&
          Object.values(watched).every(list => list.length === 0) &&
          counts?.queries === 0 &&
          counts.holds === 0 &&
          unsure === 0 &&
          !waits &&
          (planned?.entriesSince ?? 0) === 0 && <li className="soft">{t('work.look.nothing')}</li>}
      </ul>
      <Watched />
      {(['closing', 'opening'] as const).map(
        way =>
          near[way].length > 0 && (
            <Fragment key={way}>
              <h3>{t(`work.look.${way}`)}</h3>
              <ul>
                {near[way].map(({ protocol, day }) => (
                  <li key={protocol.id}>
                    <Link to="/year" search={{ species: protocol.species ?? fruitOf.get(protocol.id) }}>
                      {t(`work.look.${way}One`, { protocol: protocol.name, day: format.day(day) })}
                    </Link>
                  </li>
                ))}
              </ul>
            </Fragment>
          ),
      )}
    </aside>
  )
}
