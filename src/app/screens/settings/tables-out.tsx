import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { FileLink } from '../../parts/file-link.tsx'
import { DESCRIPTION, fileOf, TABLES } from './tables.ts'

/** The nursery as plain tables for a spreadsheet, each with what it holds. */
export function TablesOut() {
  const { t } = useTranslation()
  return (
    <details>
      <summary>{t('settings.tables.title')}</summary>
      <p className="soft small">{t('settings.tables.says')}</p>
      <ul>
        {TABLES.map(name => (
          <li key={name}>
            <FileLink href={client.downloads.table(fileOf(name))}>{fileOf(name)}</FileLink>{' '}
            <span className="soft">{t(`settings.tables.of.${name}`)}</span>
          </li>
        ))}
        <li>
          <FileLink href={client.downloads.table(DESCRIPTION)}>{DESCRIPTION}</FileLink>{' '}
          <span className="soft">{t('settings.tables.description')}</span>
        </li>
      </ul>
    </details>
  )
}
