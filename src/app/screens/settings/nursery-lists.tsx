import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { NurseryView } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'

/** The nursery's places, people and protocols, as they are set. */
export function NurseryLists({ nursery }: { readonly nursery: NurseryView }) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <>
      <details className="sheet">
        <summary>
          {t('settings.places')} ({format.number(nursery.benches.length)})
        </summary>
        <ul>
          {nursery.benches.map(({ id, name, place, areaSquareMetres }) => (
            <li key={id}>
              {t('settings.benchLine', {
                name,
                place: t(`trade.place.${place}`).toLowerCase(),
                area: format.area(areaSquareMetres),
              })}
            </li>
          ))}
        </ul>
      </details>
      <details className="sheet">
        <summary>
          {t('settings.people')} ({format.number(nursery.people.length)})
        </summary>
        <ul>
          {nursery.people.map(({ id, name, skills, hoursPerWeek }) => (
            <li key={id}>
              {t('settings.personLine', {
                name,
                skills: format.list(skills.map(skill => t(`trade.skill.${skill}`).toLowerCase())),
                hours: format.number(hoursPerWeek),
              })}
            </li>
          ))}
        </ul>
      </details>
      <p>
        <Link to="/species">{t('settings.fruits')}</Link>
      </p>
      <details className="sheet">
        <summary>
          {t('settings.protocols')} ({format.number(nursery.protocols.length)})
        </summary>
        <ul>
          {nursery.protocols.map(({ id, name, version }) => (
            <li key={id}>
              <Link to="/protocols/$protocol" params={{ protocol: id }}>
                {t('settings.protocolLine', { name, version: format.number(version) })}
              </Link>
            </li>
          ))}
        </ul>
      </details>
    </>
  )
}
