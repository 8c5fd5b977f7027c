import { type QueryKey, type UseQueryResult, useQueryClient } from '@tanstack/react-query'
import { type ReactNode, useEffect, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { type LongJob, Refused } from '../../api/index.ts'
import { capital } from '../../trade/index.ts'
import { useHowFar } from '../data/use-how-far.ts'
import { useRefusal } from '../text/use-refusal.ts'
import { useTell } from '../text/use-tell.ts'
import { UnderWay } from './under-way.tsx'

const QUIET_MS = 100

/** Says what is being fetched once it takes longer than a blink. */
export function Fetching({ what }: { readonly what: string }) {
  const { t } = useTranslation()
  const [late, setLate] = useState(false)
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), QUIET_MS)
    return () => clearTimeout(timer)
  }, [])
  return (
    <output className="soft" data-fetching>
      {late ? t('common.loading', { what: what.toLowerCase() }) : ''}
    </output>
  )
}

/** What takes long and may be given up: how far it is and a way to stop it, until it is answered. */
export function AskedLong<T>({
  query,
  of,
  what,
  asked,
  children,
}: {
  readonly query: UseQueryResult<T>
  readonly of: LongJob
  readonly what: string
  /** What is asked: stopped, it is asked anew when something else is. */
  readonly asked: QueryKey
  readonly children: (data: T) => ReactNode
}) {
  const { t } = useTranslation()
  const tell = useTell()
  const queries = useQueryClient()
  const progress = useHowFar(of, query.isFetching)
  if (query.isFetching)
    return (
      <>
        <UnderWay
          says={progress === null ? t('common.loading', { what: what.toLowerCase() }) : tell(progress.says)}
          share={progress?.share ?? null}
          onStop={() => void queries.cancelQueries({ queryKey: asked, exact: true })}
        />
        {query.data !== undefined && children(query.data)}
      </>
    )
  if (!query.isError && (query.data === undefined || query.isPlaceholderData))
    return (
      <p className="row">
        <span className="soft">{t('common.stopped')}</span>
        <Button className="plain" onPress={() => void query.refetch()}>
          {t('common.again')}
        </Button>
      </p>
    )
  return (
    <Asked query={query} what={what}>
      {children}
    </Asked>
  )
}

/** What was asked of the server: its answer shown, or what is going on, or what is wrong and how to mend it. */
export function Asked<T>({
  query,
  what,
  children,
}: {
  readonly query: UseQueryResult<T>
  readonly what: string
  readonly children: (data: T) => ReactNode
}) {
  const { t } = useTranslation()
  const say = useRefusal()
  if (query.data !== undefined) return children(query.data)
  if (!query.isError) return <Fetching what={what} />
  const refused = query.error instanceof Refused ? say(query.error.refusal) : null
  return (
    <div className="sheet stack" role="alert" {...(refused?.isEnglish && { lang: 'en' })}>
      <h2>{refused?.what ?? t('shell.noAnswer')}</h2>
      <p>
        {refused === null ? t('shell.noAnswerDetail') : `${capital(refused.where)}. ${refused.mend}`}
        {refused?.detail != null && <span lang="en"> {refused.detail}</span>}
      </p>
      <p>
        <Button className="plain" onPress={() => void query.refetch()}>
          {t('common.again')}
        </Button>
      </p>
    </div>
  )
}
