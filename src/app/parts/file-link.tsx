import { useTranslation } from 'react-i18next'
import { fetchCarried, type LongJob } from '../../api/index.ts'
import { useCarried } from '../data/use-carried.ts'
import { useHowFar } from '../data/use-how-far.ts'
import { saveFile } from '../pictures/frame/save-picture.ts'
import { useTell } from '../text/use-tell.ts'
import { UnderWay } from './under-way.tsx'

/** A file of the server, saved on this device: how far it is, is said, and it can be stopped. */
export function FileLink({
  href,
  of,
  className,
  children: name,
}: {
  readonly href: string
  /** What the server does first, where that takes long. */
  readonly of?: LongJob
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
      {job.isPending && <Fetched name={name} of={of} share={job.share} onStop={job.stop} />}
      {job.error !== null && (
        <span className="warn" role="alert">
          {t('common.notSaved', { what: name })}
        </span>
      )}
    </>
  )
}

/** On its way, or still being made by the server, which tells how far it is. */
function Fetched({
  name,
  of,
  share,
  onStop,
}: {
  readonly name: string
  readonly of: LongJob | undefined
  readonly share: number | null
  readonly onStop: () => void
}) {
  const { t } = useTranslation()
  const tell = useTell()
  const told = useHowFar(of ?? 'backup', true)
  const making = of !== undefined && share === null ? told : null
  const says = t('common.saving', { what: name })
  return (
    <UnderWay
      says={making === null ? says : `${says}. ${tell(making.says)}`}
      share={making?.share ?? share}
      onStop={onStop}
    />
  )
}
