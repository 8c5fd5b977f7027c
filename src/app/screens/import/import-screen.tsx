import { Link } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Mapping, Reading } from '../../../api/index.ts'
import { client } from '../../data/client.ts'
import { useCarried } from '../../data/use-carried.ts'
import { useHowFar } from '../../data/use-how-far.ts'
import { whoNow } from '../../data/who.ts'
import { RefusedLine } from '../../parts/refused-line.tsx'
import { UnderWay } from '../../parts/under-way.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './import.css'
import { useTell } from '../../text/use-tell.ts'
import { BroughtIn } from './brought-in.tsx'
import { DropFiles } from './drop-files.tsx'
import { EmptySheets } from './empty-sheets.tsx'
import { ReadingSummary } from './reading-summary.tsx'

type Ask = { readonly files: readonly File[] } | { readonly reading: string; readonly mapping: Mapping }

/** Own spreadsheets in: read, looked at and corrected, and only then written. */
export function ImportScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const [reading, setReading] = useState<Reading>()
  const read = useCarried(
    (ask: Ask, by): Promise<Reading> =>
      'files' in ask
        ? client.readFiles(ask.files, by)
        : client.readAgain(ask.reading, ask.mapping, by.signal),
    setReading,
  )
  const accept = useCarried((reading: string, { signal }) => client.acceptReading(reading, whoNow(), signal))
  const isBusy = read.isPending || accept.isPending
  const progress = useHowFar('reading', isBusy)
  const problem = accept.error ?? read.error

  return (
    <div className="stack">
      <div>
        <h1>{t('imports.title')}</h1>
        <p className="soft">{t('imports.says')}</p>
      </div>
      {problem !== null && <RefusedLine problem={problem} />}
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
              read.start({ files })
            }}
          />
          {isBusy && (
            <UnderWay
              says={
                read.share === null && progress !== null
                  ? tell(progress.says)
                  : t(accept.isPending ? 'imports.writing' : 'imports.reading')
              }
              share={read.share ?? progress?.share ?? null}
              onStop={read.isPending ? read.stop : accept.stop}
            />
          )}
          {(read.isStopped || accept.isStopped) && <p className="soft">{t('imports.stopped')}</p>}
          {reading !== undefined && (
            <ReadingSummary
              reading={reading}
              isBusy={isBusy}
              onSay={mapping => read.start({ reading: reading.id, mapping })}
              onAccept={() => accept.start(reading.id)}
            />
          )}
        </>
      )}
      {(reading === undefined || accept.data !== undefined) && <BroughtIn />}
      {reading === undefined && <EmptySheets />}
    </div>
  )
}
