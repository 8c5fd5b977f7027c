import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { AffectedView } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'

type Carrier = AffectedView['carriers'][number]

/** Batches that carry it: those that stand here, by bench; and those of which nothing is here any more. */
export function Carriers({ view }: { readonly view: AffectedView }) {
  const { t } = useTranslation()
  const here = view.carriers.filter(({ alive }) => alive > 0)
  const gone = view.carriers.filter(({ alive }) => alive === 0)
  return (
    <section className="sheet">
      <h2>{t('lineage.affected.carriers')}</h2>
      <CarrierList carriers={here} />
      {gone.length > 0 && (
        <details>
          <summary className="strong">{t('lineage.affected.gone')}</summary>
          <CarrierList carriers={gone} />
        </details>
      )}
    </section>
  )
}

function CarrierList({ carriers }: { readonly carriers: readonly Carrier[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  return (
    <ul className="affected-list">
      {carriers.map(one => (
        <li key={one.batch}>
          <div className="carrier">
            <Mark mark={one.mark} size={32} />
            <div>
              <p className="strong">
                <Link to="/batches/$batch" params={{ batch: one.batch }}>
                  {t('batch.title', { name: one.name })}
                </Link>
                {one.onHold && <span className="tag warn batch-hold">{t('common.onHold')}</span>}
              </p>
              <p className="soft small">
                {one.generation === 0
                  ? t('lineage.affected.itself')
                  : t('lineage.affected.carrierMeta', {
                      count: one.generation,
                      shown: format.number(one.generation),
                      day: format.fullDay(one.since),
                    })}
              </p>
            </div>
          </div>
          <div>
            <p>
              {t('lineage.affected.carrierLine', {
                kind: one.kindName,
                alive: format.number(one.alive),
                finished: format.number(one.finished),
                sent: format.number(one.sent),
              })}
            </p>
            {one.benches.length > 0 && (
              <p className="small">{format.list(one.benches.map(id => names.bench(id)))}</p>
            )}
          </div>
        </li>
      ))}
    </ul>
  )
}
