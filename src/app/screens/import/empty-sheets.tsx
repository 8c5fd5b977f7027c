import { useQuery } from '@tanstack/react-query'
import { useTranslation } from 'react-i18next'
import { client } from '../../data/client.ts'
import { Asked } from '../../parts/asked.tsx'
import { Given } from '../../parts/given.tsx'

/** Empty sheets to save, for those who have none yet. */
export function EmptySheets() {
  const { t } = useTranslation()
  const sheets = useQuery({ queryKey: ['empty-sheets'], queryFn: client.emptySheets })
  const { emptySheet } = client.downloads
  return (
    <section className="sheet stack">
      <div>
        <h2>{t('imports.empty')}</h2>
        <p className="soft small">{t('imports.emptySays')}</p>
      </div>
      <p>
        <a className="plain" href={emptySheet('all.xlsx')} download>
          {t('imports.emptyAll')}
        </a>
      </p>
      <Asked query={sheets} what={t('imports.empty')}>
        {list => (
          <ul className="empty-sheets link-list">
            {list.map(({ kind, says }) => (
              <li key={kind}>
                <p>
                  <b>{t(`imports.kinds.${kind}`)}</b>{' '}
                  <span className="soft small">
                    <Given says={says} />
                  </span>
                </p>
                <a
                  href={emptySheet(`${kind}.csv`)}
                  download
                  aria-label={`${t(`imports.kinds.${kind}`)}, ${t('imports.csv')}`}
                >
                  {t('imports.csv')}
                </a>
                <a
                  href={emptySheet(`${kind}.xlsx`)}
                  download
                  aria-label={`${t(`imports.kinds.${kind}`)}, ${t('imports.xlsx')}`}
                >
                  {t('imports.xlsx')}
                </a>
              </li>
            ))}
          </ul>
        )}
      </Asked>
    </section>
  )
}
