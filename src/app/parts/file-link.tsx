import { useTranslation } from 'react-i18next'
import { fetchCarried } from '../../api/index.ts'
import { useCarried } from '../data/use-carried.ts'
import { saveFile } from '../pictures/frame/save-picture.ts'
import { UnderWay } from './under-way.tsx'

/** A file of the server, saved on this device: how far it is, is said, and it can be stopped. */
export function FileLink({
  href,
  className,
  children: name,
}: {
  readonly href: string
  readonly className?: string
  /** What it is. */
  readonly children: string
}) {
  const { t } = useTranslation()
  const job = useCarried(fetchCarried, got => saveFile(got.file, got.name))
  return (
    <>
      <a
        href={href}
        download
        className={className}
        onClick={event => {
          event.preventDefault()
          if (!job.isPending) job.start(href)
        }}
      >
        {name}
      </a>
      {job.isPending && (
        <UnderWay says={t('common.saving', { what: name })} share={job.share} onStop={job.stop} />
      )}
      {job.error !== null && (
        <span className="warn" role="alert">
          {t('common.notSaved', { what: name })}
        </span>
      )}
    </>
  )
}
