import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { flushSync } from 'react-dom'
import { useTranslation } from 'react-i18next'
import { type Said, strike } from '../data/say.ts'

interface Done {
  /** Says what was done; where entries were made, they can be struck from here. */
  readonly tell: (
    sentence: string,
    said?: { readonly entries: readonly Pick<Said['entries'][number], 'id'>[]; readonly kept: boolean },
  ) => void
}

const DoneContext = createContext<Done>({ tell: () => undefined })

export const useDone = (): Done => useContext(DoneContext)

/** The line that says what was just done, with undo beside it. It stays until the next deed or until put away. */
export function DoneLine({ children }: { readonly children: ReactNode }) {
  const { t } = useTranslation()
  const [last, setLast] = useState<{ sentence: string; entries: readonly string[] } | null>(null)
  const tell = useCallback<Done['tell']>((sentence, said) => {
    if (said?.kept === false) return
    // At once, and not with whatever else is to be drawn.
    flushSync(() => setLast({ sentence, entries: said?.entries.map(({ id }) => id) ?? [] }))
  }, [])
  const undo = async () => {
    if (last === null) return
    await strike([...last.entries].reverse(), t('common.undo'))
    setLast({ sentence: t('common.undone'), entries: [] })
  }
  return (
    <DoneContext value={useMemo(() => ({ tell }), [tell])}>
      {children}
      <div className="done" role="status">
        {last !== null && (
          <div className="done-line">
            <span>{last.sentence}</span>
            {last.entries.length > 0 && (
              <Button className="quiet" onPress={() => void undo()}>
                {t('common.undo')}
              </Button>
            )}
            <Button className="quiet" onPress={() => setLast(null)}>
              {t('common.close')}
            </Button>
          </div>
        )}
      </div>
    </DoneContext>
  )
}
