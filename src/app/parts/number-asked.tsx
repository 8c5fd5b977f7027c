import { useEffect, useId, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { numberTyped } from '../text/measure-typed.ts'
import { type Shown, shownUnit } from '../text/shown-unit.ts'
import { useFormat } from '../text/use-format.tsx'

const plain = shownUnit('', 'metric')
const tidy = (value: number, figures: number): number => Number(value.toPrecision(figures))
/** What was turned into other units loses the dust of it; what was not stands as it is. */
const asShown = (value: number, { to }: Shown): number => (to(1) === 1 ? value : tidy(to(value), 4))

const meant = (typed: number, { from }: Shown): number => (from(1) === 1 ? typed : tidy(from(typed), 8))

/**
 * A number that is asked: what is typed counts as soon as it makes sense, and is said to be wrong where it does not.
 * Value, bounds and what is said are metric; it is shown and typed as the reader has it.
 */
export function NumberAsked({
  label,
  value,
  least,
  most = Number.POSITIVE_INFINITY,
  step = 1,
  isWhole = false,
  shown = plain,
  ifEmpty,
  onSay,
}: {
  readonly label: string
  readonly value: number | null
  readonly least: number
  readonly most?: number
  /** Of the arrow keys, as shown. */
  readonly step?: number
  readonly isWhole?: boolean
  readonly shown?: Shown
  /** What it means to leave it empty; without it a number is needed. */
  readonly ifEmpty?: string
  readonly onSay: (value: number | null) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const id = useId()
  const own = value === null ? '' : format.typed(asShown(value, shown))
  const lowest = asShown(least, shown)
  const highest = asShown(most, shown)
  const [text, setText] = useState(own)
  // What others say (a link, another field) shows here; what is being typed stays as it is typed.
  useEffect(() => {
    setText(now => (meant(numberTyped(now), shown) === value ? now : own))
  }, [own, value, shown])

  const wrongOf = (said: string): string | undefined => {
    const need = t(isWhole ? 'common.needWhole' : 'common.needNumber')
    if (said.trim() === '') return ifEmpty === undefined ? need : undefined
    const given = numberTyped(said)
    if (!Number.isFinite(given) || (isWhole && !Number.isInteger(given))) return need
    if (given >= lowest && given <= highest) return undefined
    return Number.isFinite(highest)
      ? t('common.outOfRange', { least: format.typed(lowest), most: format.typed(highest) })
      : t('common.tooFew', { least: format.typed(lowest) })
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
        placeholder={ifEmpty}
        aria-invalid={wrong !== undefined}
        aria-describedby={wrong === undefined ? undefined : `${id}-wrong`}
        onChange={event => {
          const said = event.target.value
          setText(said)
          if (wrongOf(said) === undefined) onSay(said.trim() === '' ? null : meant(numberTyped(said), shown))
        }}
        onKeyDown={event => {
          if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return
          const given = numberTyped(text)
          if (!Number.isFinite(given)) return
          event.preventDefault()
          const moved = given + (event.key === 'ArrowUp' ? step : -step)
          const held = Number(Math.min(highest, Math.max(lowest, moved)).toPrecision(12))
          setText(format.typed(held))
          onSay(meant(held, shown))
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
