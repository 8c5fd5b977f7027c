import { useEffect, useState } from 'react'
import { Input, Label, SearchField } from 'react-aria-components'
import { useTranslation } from 'react-i18next'

const SETTLE_MS = 120

/** Words to narrow a list by. The list follows while typing. */
export function FindField({
  value,
  hint,
  onType = () => undefined,
  onFind,
}: {
  readonly value: string
  readonly hint: string
  /** At every key, where the list is here already. */
  readonly onType?: (said: string) => void
  /** Once the typing has settled. */
  readonly onFind: (said: string) => void
}) {
  const { t } = useTranslation()
  const [said, setSaid] = useState(value)
  useEffect(() => setSaid(value), [value])
  useEffect(() => {
    if (said === value) return
    const timer = setTimeout(() => onFind(said), SETTLE_MS)
    return () => clearTimeout(timer)
  })
  return (
    <SearchField
      className="field find-field"
      value={said}
      onChange={next => {
        setSaid(next)
        onType(next)
      }}
    >
      <Label className="unseen">{t('common.find')}</Label>
      <Input placeholder={hint} />
    </SearchField>
  )
}
