import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { wayOf } from '../../../trade/facts/index.ts'
import type { MethodId } from '../../../trade/index.ts'
import { useFruits } from '../../data/use-fruits.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'

/** The fruits that are made by a method, with the share that succeeds. */
export function MethodFruits({ method }: { readonly method: MethodId }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const made = useFruits()
    .all.flatMap(species => {
      const way = wayOf(species, method)
      return way === undefined ? [] : [{ species, way }]
    })
    .sort((a, b) => term(a.species.commonName).localeCompare(term(b.species.commonName), format.locale))
  return (
    <section className="sheet stack">
      <div>
        <h2>{t('methods.fruits.title')}</h2>
        <p className="soft small">{t('methods.fruits.says')}</p>
      </div>
      {made.length === 0 && <p>{t('methods.fruits.none')}</p>}
      <ul className="method-protocols link-list">
        {made.map(({ species, way: { success, importance } }) => (
          <li key={species.id}>
            <Link to="/species/$species" params={{ species: species.id }}>
              {term(species.commonName)}
            </Link>{' '}
            <span className="soft small">
              {t('methods.fruits.line', {
                importance: t(`species.importance.${importance}`),
                share: format.share(success.typical),
                range: format.shareRange(success.low, success.high),
                basis: term(success.basis),
              })}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
