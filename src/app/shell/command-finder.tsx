import { useNavigate } from '@tanstack/react-router'
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
import { useJob } from '../data/use-job.ts'
import { setTheme, THEMES } from '../theme/theme.ts'
import { type Findable, findAnything } from './find-anything.ts'
import { SCREENS } from './screens.ts'
import { useFindables } from './use-findables.ts'

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
  const things = useFindables(true)
  const found = findAnything(things, said)

  const go = ({ kind, id }: Findable): void => {
    onClose()
    switch (kind) {
      case 'screen':
        return void navigate({ to: SCREENS.find(screen => screen.id === id)!.path })
      case 'batch':
        return void navigate({ to: '/batches/$batch', params: { batch: id } })
      case 'order':
        return void navigate({ to: '/orders', search: { order: id } })
      case 'mother':
        return void navigate({ to: '/mothers', search: { mother: id } })
      case 'bench':
        return void navigate({ to: '/benches', search: { bench: id } })
      case 'fruit':
        return void navigate({ to: '/species/$species', params: { species: id } })
      case 'method':
        return void navigate({ to: '/methods/$method', params: { method: id } })
      case 'protocol':
        return void navigate({ to: '/protocols/$protocol', params: { protocol: id } })
      case 'deed': {
        const theme = THEMES.find(name => id === `theme:${name}`)
        if (theme !== undefined) setTheme(theme)
        else if (id === 'plan') start()
        else if (id === 'stop') stop()
        else void navigate({ to: '/orders/new' })
      }
    }
  }

  return (
    <Dialog className="finder" aria-label={t('shell.finder')}>
      <Autocomplete inputValue={said} onInputChange={setSaid}>
        <SearchField autoFocus className="field finder-field">
          <Label className="unseen">{t('shell.finder')}</Label>
          <Input placeholder={t('shell.finderHint')} />
        </SearchField>
        <Menu
          className="menu finder-found"
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
      </Autocomplete>
    </Dialog>
  )
}
