import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { NurseryView } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'

/** Where the nursery's own registers are typed in and changed, and its protocols. */
export function NurseryLists({ nursery }: { readonly nursery: NurseryView }) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <>
      <p>
        <Link to="/nursery">{t('settings.yours')}</Link>
      </p>
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
