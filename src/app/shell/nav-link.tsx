import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { look } from '../data/queries.ts'
import { useFormat } from '../text/use-format.tsx'
import { ScreenIcon } from './screen-icon.tsx'
import type { SCREENS } from './screens.ts'

export function NavLink({
  screen: { id, path },
  replace = false,
}: {
  readonly screen: (typeof SCREENS)[number]
  /** In the place of what is in the history now. */
  readonly replace?: boolean
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const { data } = useQuery(look.nursery())
  const open = id === 'checks' ? (data?.counts.queries ?? 0) : 0
  return (
    <Link to={path} className="nav-link" activeProps={{ 'aria-current': 'page' }} replace={replace}>
      <ScreenIcon of={id} />
      <span>{t(`shell.screens.${id}`)}</span>
      {open > 0 && <span className="nav-count">{format.number(open)}</span>}
    </Link>
  )
}
