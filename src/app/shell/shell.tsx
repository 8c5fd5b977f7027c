import { useQueryClient } from '@tanstack/react-query'
import { Outlet } from '@tanstack/react-router'
import { lazy, Suspense, useEffect, useState } from 'react'
import { useTranslation } from 'react-i18next'
import './shell.css'
import './nav.css'
import './ruler.css'
import './status.css'
import './finder.css'
import { atLeisure } from '../data/at-leisure.ts'
import { DoneLine } from '../parts/done.tsx'
import { InventedLine } from './invented-line.tsx'
import { JobStatus } from './job-status.tsx'
import { NavBar } from './nav-bar.tsx'
import { NavColumn } from './nav-column.tsx'
import { NewerVersion } from './newer-version.tsx'
import { fetchOutboxList, OutboxStatus } from './outbox-status.tsx'
import { SeasonRuler } from './season-ruler.tsx'
import { useIsWide } from './use-is-wide.ts'
import { useKeptFocus } from './use-kept-focus.ts'
import { usePageTitle } from './use-page-title.ts'

/** The answers of the first view are here, and it is drawn. */
const QUIET_MS = 500

/** Not needed for a first view: fetched after it, so that it is there when it is called. */
const CommandFinder = lazy(async () => ({
  default: (await import('./command-finder.tsx')).CommandFinder,
}))

/** The frame of every screen: where one can go, what is not yet sent, whether a plan is being made. */
export function Shell() {
  const { t } = useTranslation()
  const [finding, setFinding] = useState(false)
  const [canFind, setCanFind] = useState(false)
  const isWide = useIsWide()
  const queries = useQueryClient()
  usePageTitle()
  useKeptFocus()
  useEffect(() => {
    void atLeisure(queries, QUIET_MS).then(() => {
      setCanFind(true)
      void fetchOutboxList()
    })
  }, [queries])

  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const typing =
        event.target instanceof HTMLElement && event.target.closest('input, textarea, select') !== null
      if (
        (event.key.toLowerCase() === 'k' && (event.ctrlKey || event.metaKey)) ||
        (event.key === '/' && !typing)
      ) {
        event.preventDefault()
        setFinding(true)
      }
    }
    addEventListener('keydown', onKey)
    return () => removeEventListener('keydown', onKey)
  }, [])

  return (
    <div className="shell">
      <a className="skip" href="#page">
        {t('shell.skip')}
      </a>
      {isWide && <NavColumn onFind={() => setFinding(true)} />}
      <div className="shell-page">
        <header className="shell-top">
          <SeasonRuler />
          <JobStatus />
          <OutboxStatus />
          <NewerVersion />
        </header>
        <InventedLine />
        <main id="page" tabIndex={-1}>
          <DoneLine>
            <Outlet />
          </DoneLine>
        </main>
      </div>
      {!isWide && <NavBar onFind={() => setFinding(true)} />}
      {(canFind || finding) && (
        <Suspense>
          <CommandFinder isOpen={finding} onClose={() => setFinding(false)} />
        </Suspense>
      )}
    </div>
  )
}
