import { useEffect, useRef } from 'react'
import { Input, Label, SearchField } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { useTypedLink } from './use-typed-link.ts'

/** Words to narrow a list by. The list follows while typing. */
export function FindField({
  inAddress = '',
  hint,
  onFind = () => undefined,
  onRest,
}: {
  readonly inAddress: string | undefined
  readonly hint: string
  /** At every key, where the list is here already. */
  readonly onFind?: (said: string) => void
  /** For the address, once the typing rests. */
  readonly onRest: (said: string | undefined) => void
}) {
  const { t } = useTranslation()
  const [said, type, settle] = useTypedLink(inAddress, said => onRest(said || undefined))
  const told = useRef(said)
  const tell = (words: string) => {
    told.current = words
    onFind(words)
  }
  useEffect(() => {
    // A link or the way back, not a key.
    if (said !== told.current) tell(said)
  })
  return (
    <SearchField
      className="field find-field"
      value={said}
      onChange={next => {
        type(next)
        tell(next)
      }}
      onBlur={settle}
    >
      <Label className="unseen">{t('common.find')}</Label>
      <Input placeholder={hint} />
    </SearchField>
  )
}
