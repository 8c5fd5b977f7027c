import { type ReactNode, useEffect, useRef } from 'react'
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { focusFirstField } from './first-field.ts'

/** A sheet laid over the page for one thing; Escape and a touch outside put it away. */
export function Leaf({
  title,
  isOpen,
  onClose,
  children,
}: {
  readonly title: string
  readonly isOpen: boolean
  readonly onClose: () => void
  readonly children: ReactNode
}) {
  return (
    <ModalOverlay className="veil" isDismissable isOpen={isOpen} onOpenChange={open => !open && onClose()}>
      <Modal className="leaf">
        <Dialog>
          <LeafHead title={title} onClose={onClose} />
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  )
}

function LeafHead({ title, onClose }: { readonly title: string; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const head = useRef<HTMLDivElement>(null)
  // Before the sheet takes the focus itself, which it leaves to what is in it.
  useEffect(() => {
    const sheet = head.current?.closest('[role="dialog"]') ?? null
    const form = sheet?.querySelector('form')
    if (form) focusFirstField(form, sheet)
  }, [])
  return (
    <div ref={head} className="page-head">
      <Heading slot="title" level={2}>
        {title}
      </Heading>
      <Button className="quiet" onPress={onClose}>
        {t('common.close')}
      </Button>
    </div>
  )
}
