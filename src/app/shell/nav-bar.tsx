import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { Leaf } from '../parts/leaf.tsx'
import { useOpened } from '../parts/use-opened.ts'
import { NavLink } from './nav-link.tsx'
import { ScreenIcon } from './screen-icon.tsx'
import { IN_BAR, SCREENS } from './screens.ts'
import { ThemePick } from './theme-pick.tsx'
import { WhoPick } from './who-pick.tsx'

/** The bar under the thumb, on a phone. */
export function NavBar({ onFind }: { readonly onFind: () => void }) {
  const { t } = useTranslation()
  const [opened, open] = useOpened()
  const close = () => open(null)
  return (
    <nav className="nav-bar" aria-label={t('shell.navigation')}>
      {SCREENS.slice(0, IN_BAR).map(screen => (
        <NavLink key={screen.id} screen={screen} />
      ))}
      <Button className="nav-link" onPress={() => open('more')}>
        <ScreenIcon of="more" />
        <span>{t('shell.more')}</span>
      </Button>
      <Leaf title={t('shell.more')} isOpen={opened === 'more'} onClose={close}>
        <div className="more">
          <Button
            className="nav-link"
            onPress={() => {
              close()
              onFind()
            }}
          >
            <ScreenIcon of="find" />
            <span>{t('shell.finder')}</span>
          </Button>
          <ul>
            {SCREENS.slice(IN_BAR).map(screen => (
              <li key={screen.id}>
                <NavLink screen={screen} replace />
              </li>
            ))}
          </ul>
          <WhoPick />
          <ThemePick />
        </div>
      </Leaf>
    </nav>
  )
}
