import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { yearsSince } from './years-since.ts'

/** Where its wood came from and who verified it, where and since when it stands, and its passport data. */
export function MotherOrigin({ view, today }: { readonly view: MotherView; readonly today: string }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { mother } = view.row
  const passport = Object.entries(mother.passport ?? {})
  return (
    <div>
      <h3>{t('mothers.provenanceTitle')}</h3>
      <ul className="small">
        <li>{mother.provenance === '' ? t('mothers.noProvenance') : mother.provenance}</li>
        <li>
          {mother.verifiedBy === undefined
            ? t('mothers.notVerified')
            : t('mothers.verified', { who: mother.verifiedBy })}
        </li>
        {mother.planted !== null && (
          <li>
            {t('mothers.planted', {
              day: format.fullDay(mother.planted),
              years: format.number(yearsSince(mother.planted, today)),
            })}
          </li>
        )}
        {mother.heightMetres !== undefined && (
          <li>{t('mothers.height', { height: format.length(mother.heightMetres) })}</li>
        )}
        {mother.position !== null && (
          <li>
            {t('mothers.place', {
              x: format.length(mother.position.xMetres),
              y: format.length(mother.position.yMetres),
            })}
          </li>
        )}
      </ul>
      {passport.length > 0 && (
        <details>
          <summary className="small">{t('mothers.passport')}</summary>
          <table className="small">
            <tbody>
              {passport.map(([field, value]) => (
                <tr key={field}>
                  <th scope="row">{field}</th>
                  <td>{value}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
    </div>
  )
}
