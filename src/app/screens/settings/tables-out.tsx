import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
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
            <a href={client.downloads.table(fileOf(name))} download>
              {fileOf(name)}
            </a>{' '}
            <span className="soft">{t(`settings.tables.of.${name}`)}</span>
          </li>
        ))}
        <li>
          <a href={client.downloads.table(DESCRIPTION)} download>
            {DESCRIPTION}
          </a>{' '}
          <span className="soft">{t('settings.tables.description')}</span>
        </li>
      </ul>
    </details>
  )
}
