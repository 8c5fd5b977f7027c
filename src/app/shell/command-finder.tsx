import { type LinkProps, useNavigate } from '@tanstack/react-router'
import { useState } from 'react'
import {
  Autocomplete,
  Dialog,
  Input,
  Label,
  Menu,
  MenuItem,
  Modal,
  ModalOverlay,
  SearchField,
} from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { client } from '../data/client.ts'
import { useJob } from '../data/use-job.ts'
import { setTheme, THEMES } from '../theme/theme.ts'
import { type Findable, findAnything } from './find-anything.ts'
import { SCREENS } from './screens.ts'
import { useFindables } from './use-findables.ts'
import { focusPage } from './use-kept-focus.ts'

/** Where what is to be done is done. */
const DEED_PLACES: ReadonlyMap<string, LinkProps> = new Map<string, LinkProps>([
  ['newOrder', { to: '/orders/new' }],
  ['promise', { to: '/orders', hash: 'promise' }],
  ['accept', { to: '/season', hash: 'accept' }],
  ['import', { to: '/import' }],
  ['people', { to: '/nursery', hash: 'people' }],
  ['language', { to: '/settings', hash: 'language' }],
])

/** Anything in a few keystrokes: a screen, a batch, an order, a mother tree, a bench, or something to do. */
export function CommandFinder({
  isOpen,
  onClose,
}: {
  readonly isOpen: boolean
  readonly onClose: () => void
}) {
  return (
    <ModalOverlay className="veil" isDismissable isOpen={isOpen} onOpenChange={open => !open && onClose()}>
      <Modal className="leaf">
        <FinderLeaf onClose={onClose} />
      </Modal>
    </ModalOverlay>
  )
}

function FinderLeaf({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation()
  const navigate = useNavigate()
  const { start, stop } = useJob()
  const [said, setSaid] = useState('')
  const things = useFindables(said)
  const found = findAnything(things, said)

  const pathOf = ({ kind, id }: Findable): LinkProps | null => {
    switch (kind) {
      case 'screen':
        return { to: SCREENS.find(screen => screen.id === id)!.path }
      case 'batch':
        return { to: '/batches/$batch', params: { batch: id } }
      case 'order':
        return { to: '/orders', search: { order: id } }
      case 'mother':
        return { to: '/mothers', search: { mother: id } }
      case 'bench':
        return { to: '/benches', search: { bench: id } }
      case 'fruit':
        return { to: '/species/$species', params: { species: id } }
      case 'method':
        return { to: '/methods/$method', params: { method: id } }
      case 'protocol':
        return { to: '/protocols/$protocol', params: { protocol: id } }
      case 'deed':
        return DEED_PLACES.get(id) ?? null
    }
  }
  const go = (thing: Findable): void => {
    onClose()
    const path = pathOf(thing)
    if (path !== null) return void navigate(path).then(focusPage)
    const { id } = thing
    const theme = THEMES.find(name => id === `theme:${name}`)
    if (theme !== undefined) setTheme(theme)
    else if (id === 'plan') start()
    else if (id === 'stop') stop()
    else if (id === 'backup') location.assign(client.downloads.backup)
  }

  return (
    <Dialog className="finder" aria-label={t('shell.finder')}>
      <Autocomplete inputValue={said} onInputChange={setSaid}>
        <SearchField autoFocus className="field finder-field">
          <Label className="unseen">{t('shell.finder')}</Label>
          <Input placeholder={t('shell.finderHint')} />
        </SearchField>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, by the keys too */}
        <section className="finder-found" aria-label={t('shell.finderFound')} tabIndex={0}>
          <Menu
            className="menu"
            aria-label={t('shell.finder')}
            renderEmptyState={() => <p className="soft">{t('shell.finderEmpty')}</p>}
            onAction={key => {
              const thing = found.find(({ kind, id }) => `${kind} ${id}` === key)
              if (thing !== undefined) go(thing)
            }}
          >
            {found.map(thing => (
              <MenuItem
                key={`${thing.kind} ${thing.id}`}
                id={`${thing.kind} ${thing.id}`}
                textValue={thing.name}
              >
                <span className="strong">{thing.name}</span>
                <span className="soft finder-also">{thing.also}</span>
                <span className="soft small">{t(`shell.finderKind.${thing.kind}`)}</span>
              </MenuItem>
            ))}
          </Menu>
        </section>
      </Autocomplete>
    </Dialog>
  )
}
