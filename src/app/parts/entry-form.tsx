import { type ReactNode, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Body } from '../../record/index.ts'
import { say } from '../data/say.ts'
import { useDone } from './done.tsx'
import { focusWrong } from './focus-wrong.ts'
import { Leaf } from './leaf.tsx'

/** A leaf that asks for one thing and says it to the record: what lacks is named at the first try, what is kept is told. */
export function EntryForm({
  title,
  bodies,
  on,
  need,
  told,
  keep,
  onKept,
  onClose,
  children,
}: {
  readonly title: string
  /** What is said; null while something lacks. */
  readonly bodies: readonly Body[] | null
  /** The day on which it was so, where that is not today. */
  readonly on?: string
  /** What it takes, for whom something lacks. */
  readonly need: string
  readonly told: string
  /** On the button, where it is not the usual word. */
  readonly keep?: string
  readonly onKept?: () => void
  readonly onClose: () => void
  readonly children: ReactNode
}) {
  const { t } = useTranslation()
  const done = useDone()
  const [isShort, setShort] = useState(false)
  const keepIt = async () => {
    if (bodies === null) return setShort(true)
    const said = await say(bodies, on)
    if (!said.kept) return
    done.tell(told, said)
    onClose()
    onKept?.()
  }
  return (
    <Leaf title={title} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          // What is said to be wrong stands beside its field: it is neither kept nor passed over.
          if (!focusWrong(event.currentTarget)) void keepIt()
        }}
      >
        {children}
        {isShort && bodies === null && (
          <p className="warn" role="alert">
            {need}
          </p>
        )}
        <Button type="submit" className="deed large">
          {keep ?? t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
