import { useQuery } from '@tanstack/react-query'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { NavLink } from './nav-link.tsx'
import { ScreenIcon } from './screen-icon.tsx'
import { SCREENS } from './screens.ts'
import { ThemePick } from './theme-pick.tsx'
import { WhoPick } from './who-pick.tsx'

/** The list of screens beside the page, on a wide window. */
export function NavColumn({ onFind }: { readonly onFind: () => void }) {
  const { t } = useTranslation()
  const { data } = useQuery(look.nursery())
  return (
    <aside className="nav-column" aria-label={t('shell.side')}>
      <p className="brand">
        <img src="/budstick.svg" alt="" width={30} height={30} />
        <span>{data?.site?.name ?? 'Budstick'}</span>
      </p>
      <Button className="find-button" onPress={onFind} aria-keyshortcuts="/ Control+K">
        <ScreenIcon of="find" />
        <span>{t('shell.finder')}</span>
        <kbd>/</kbd>
      </Button>
      <nav aria-label={t('shell.navigation')}>
        <ul>
          {SCREENS.map(screen => (
            <li key={screen.id}>
              <NavLink screen={screen} />
            </li>
          ))}
        </ul>
      </nav>
      <div className="nav-foot">
        <WhoPick />
        <ThemePick />
      </div>
    </aside>
  )
}
