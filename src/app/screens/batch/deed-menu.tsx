import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { type DeedKind, MORE_DEEDS, possible } from './batch-deed.ts'

/** All that happens to a batch less often than a count. */
export function DeedMenu({
  view,
  onPick,
}: {
  readonly view: BatchView
  readonly onPick: (deed: DeedKind) => void
}) {
  const { t } = useTranslation()
  return (
    <MenuTrigger>
      <Button className="plain">{t('batch.more')}</Button>
      <Popover className="pop" placement="bottom start">
        <Menu className="menu" onAction={key => onPick(key as DeedKind)}>
          {MORE_DEEDS.filter(deed => possible(view, deed)).map(deed => (
            <MenuItem key={deed} id={deed}>
              {t(`batch.does.${deed}`)}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  )
}
