import { useMutation } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { type Mapping, type Reading, Refused } from '../../../api/index.ts'
import { client } from '../../data/client.ts'
import { whoNow } from '../../data/who.ts'
import { Fetching } from '../../parts/asked.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './import.css'
import { BroughtIn } from './brought-in.tsx'
import { DropFiles } from './drop-files.tsx'
import { EmptySheets } from './empty-sheets.tsx'
import { ReadingSummary } from './reading-summary.tsx'

type Ask = { readonly files: readonly File[] } | { readonly reading: string; readonly mapping: Mapping }

/** Own spreadsheets in: read, looked at and corrected, and only then written. */
export function ImportScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const read = useMutation({
    mutationFn: (ask: Ask): Promise<Reading> =>
      'files' in ask ? client.readFiles(ask.files) : client.readAgain(ask.reading, ask.mapping),
  })
  const accept = useMutation({ mutationFn: (reading: string) => client.acceptReading(reading, whoNow()) })
  const reading = read.data
  const problem = accept.error ?? read.error

  return (
    <div className="stack">
      <div>
        <h1>{t('imports.title')}</h1>
        <p className="soft">{t('imports.says')}</p>
      </div>
      {problem !== null && (
        <p className="warn" role="alert">
          {problem instanceof Refused ? t('imports.failed', problem.refusal) : t('shell.outbox.away')}
        </p>
      )}
      {accept.data !== undefined ? (
        <div className="sheet row" role="status">
          <p className="strong">
            {t('imports.written', { count: accept.data.written, shown: format.number(accept.data.written) })}
          </p>
          <Link to="/season" className="deed">
            {t('imports.planNext')}
          </Link>
        </div>
      ) : (
        <>
          <DropFiles
            again={reading !== undefined}
            onFiles={files => {
              accept.reset()
              read.mutate({ files })
            }}
          />
          {read.isPending && <Fetching what={t('imports.sheets')} />}
          {reading !== undefined && (
            <ReadingSummary
              reading={reading}
              isBusy={read.isPending || accept.isPending}
              onSay={mapping => read.mutate({ reading: reading.id, mapping })}
              onAccept={() => accept.mutate(reading.id)}
            />
          )}
        </>
      )}
      {(reading === undefined || accept.data !== undefined) && <BroughtIn />}
      {reading === undefined && <EmptySheets />}
    </div>
  )
}
