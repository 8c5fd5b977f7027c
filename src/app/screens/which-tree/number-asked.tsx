import { useEffect, useId, useState } from 'react'
import { useTranslation } from 'react-i18next'

const read = (text: string): number => Number(text.trim().replace(',', '.').replace('−', '-'))

/** A number that is asked: what is typed counts as soon as it makes sense, and is said to be wrong where it does not. */
export function NumberAsked({
  label,
  value,
  least,
  most,
  step = 1,
  isOptional = false,
  onSay,
}: {
  readonly label: string
  readonly value: number | null
  readonly least: number
  readonly most: number
  readonly step?: number
  readonly isOptional?: boolean
  readonly onSay: (value: number | null) => void
}) {
  const { t } = useTranslation()
  const id = useId()
  const shown = value === null ? '' : String(value)
  const [text, setText] = useState(shown)
  // What others say (a link, another field) shows here; what is being typed stays as it is typed.
  useEffect(() => {
    setText(now => (now.trim() !== '' && read(now) === value ? now : shown))
  }, [shown, value])

  const wrongOf = (said: string): string | undefined => {
    if (said.trim() === '') return isOptional ? undefined : t('whichTree.needNumber')
    const given = read(said)
    if (!Number.isFinite(given)) return t('whichTree.needNumber')
    return given < least || given > most ? t('whichTree.outOfRange', { least, most }) : undefined
  }
  const wrong = wrongOf(text)
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        value={text}
        placeholder={isOptional ? t('whichTree.optional') : undefined}
        aria-invalid={wrong !== undefined}
        aria-describedby={wrong === undefined ? undefined : `${id}-wrong`}
        onChange={event => {
          const said = event.target.value
          setText(said)
          if (wrongOf(said) === undefined) onSay(said.trim() === '' ? null : read(said))
        }}
        onKeyDown={event => {
          if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return
          const given = read(text)
          if (!Number.isFinite(given) || text.trim() === '') return
          event.preventDefault()
          const moved = given + (event.key === 'ArrowUp' ? step : -step)
          const held = Number(Math.min(most, Math.max(least, moved)).toPrecision(12))
          setText(String(held))
          onSay(held)
        }}
      />
      {wrong !== undefined && (
        <span className="wrong" id={`${id}-wrong`}>
          {wrong}
        </span>
      )}
    </div>
  )
}
