import type { ReactNode } from 'react'
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { useTranslation } from 'react-i18next'

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
  const { t } = useTranslation()
  return (
    <ModalOverlay className="veil" isDismissable isOpen={isOpen} onOpenChange={open => !open && onClose()}>
      <Modal className="leaf">
        <Dialog>
          <div className="page-head">
            <Heading slot="title" level={2}>
              {title}
            </Heading>
            <Button className="quiet" onPress={onClose}>
              {t('common.close')}
            </Button>
          </div>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  )
}
