import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { AffectedView } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** What stood on a bench with it or was cut on a day with it: marked apart, for it is no descent. */
export function WiderCircle({ view }: { readonly view: AffectedView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const benches = new Map<string, { readonly name: string; readonly on: Set<string> }>()
  for (const { batch, name, bench } of view.sharedBenches) {
    const before = benches.get(batch)
    if (before) before.on.add(names.bench(bench))
    else benches.set(batch, { name, on: new Set([names.bench(bench)]) })
  }
  const isEmpty = benches.size === 0 && view.sharedBlades.length === 0
  return (
    <section className="sheet wider-circle stack">
      <div>
        <h2>{t('lineage.affected.circle')}</h2>
        <p>{t(isEmpty ? 'lineage.affected.noneNear' : 'lineage.affected.circleSays')}</p>
      </div>
      {benches.size > 0 && (
        <details>
          <summary className="strong">
            {t('lineage.affected.benches')} ({format.number(benches.size)})
          </summary>
          <ul className="columns small">
            {[...benches].map(([batch, { name, on }]) => (
              <li key={batch}>
                <Link to="/batches/$batch" params={{ batch }}>
                  {t('lineage.affected.times', { count: on.size, name, benches: format.list([...on]) })}
                </Link>
              </li>
            ))}
          </ul>
        </details>
      )}
      {view.sharedBlades.length > 0 && (
        <details>
          <summary className="strong">
            {t('lineage.affected.blades')} ({format.number(view.sharedBlades.length)})
          </summary>
          <ul className="columns small">
            {view.sharedBlades.map(({ what, id, name, person, on }) => (
              <li key={`${what} ${id} ${person} ${on}`}>
                {t('lineage.affected.bladeLine', {
                  name,
                  person: names.person(person),
                  day: format.fullDay(on),
                })}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}
