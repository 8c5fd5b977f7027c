import { Button, DropZone, FileTrigger } from 'react-aria-components'
import { useTranslation } from 'react-i18next'

const TYPES = ['.csv', '.txt', '.tsv', '.xlsx']

/** Files by drag, by choosing, or pasted. */
export function DropFiles({
  again,
  onFiles,
}: {
  readonly again: boolean
  readonly onFiles: (files: readonly File[]) => void
}) {
  const { t } = useTranslation()
  return (
    <DropZone
      className={again ? 'drop again' : 'drop'}
      aria-label={t('imports.title')}
      onDrop={async ({ items }) => {
        const files = await Promise.all(items.flatMap(item => (item.kind === 'file' ? [item.getFile()] : [])))
        if (files.length > 0) onFiles(files)
      }}
    >
      {!again && <p>{t('imports.drop')}</p>}
      <FileTrigger
        allowsMultiple
        acceptedFileTypes={TYPES}
        onSelect={list => list !== null && onFiles([...list])}
      >
        <Button className={again ? 'plain' : 'deed large'}>
          {t(again ? 'imports.again' : 'imports.choose')}
        </Button>
      </FileTrigger>
      {!again && <p className="soft small">{t('imports.formats')}</p>}
    </DropZone>
  )
}
