import { useLocation } from '@tanstack/react-router'
import { useEffect } from 'react'
import { useTranslation } from 'react-i18next'
import { useNames } from '../data/use-names.tsx'
import { pageNames } from './page-heading.ts'
import { SCREENS } from './screens.ts'

/** The window is called after what its page is about; while that is on its way, after the screen (WCAG 2.2, 2.4.2). */
export const usePageTitle = (): void => {
  const { t } = useTranslation()
  const { nursery } = useNames()
  const pathname = useLocation({ select: location => location.pathname })
  useEffect(() => {
    const page = document.getElementById('page')
    if (page === null) return
    const screen = SCREENS.find(({ path }) => pathname.startsWith(path))
    const place = nursery?.site?.name ?? 'Budstick'
    const name = () => {
      const about = pageNames()
      const page = about.length > 0 ? about.join(' · ') : screen ? t(`shell.screens.${screen.id}`) : ''
      document.title = page === '' ? place : t('shell.title', { page, place })
    }
    name()
    const changes = new MutationObserver(name)
    changes.observe(page, { subtree: true, childList: true, characterData: true })
    return () => changes.disconnect()
  }, [t, nursery, pathname])
}
