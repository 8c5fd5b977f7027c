import { useRef, useState } from 'react'
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { flushSync } from 'react-dom'
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
  const button = useRef<HTMLButtonElement>(null)
  const [isOpen, setOpen] = useState(false)
  /** The form that opens gives the focus back to what had it: the list will be gone by then, its button stays. */
  const pick = (deed: DeedKind) => {
    flushSync(() => setOpen(false))
    button.current?.focus()
    onPick(deed)
  }
  return (
    <MenuTrigger isOpen={isOpen} onOpenChange={setOpen}>
      <Button ref={button} className="plain">
        {t('batch.more')}
      </Button>
      <Popover className="pop" placement="bottom start">
        <Menu className="menu" onAction={key => pick(key as DeedKind)}>
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
