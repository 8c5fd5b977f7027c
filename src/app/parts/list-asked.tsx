import { type ReactNode, useRef, useState } from 'react'
import { Button } from 'react-aria-components'
import { flushSync } from 'react-dom'
import { useTranslation } from 'react-i18next'

/** Any number of things of one sort that are asked in a form: each with its fields, one more by a button, each left out again. */
export function ListAsked<T>({
  label,
  says,
  rows,
  over = 0,
  overSays,
  add,
  next,
  called,
  onChange,
  children,
}: {
  readonly label: string
  readonly says: string
  readonly rows: readonly T[]
  /** So many of the first, as the form opened, are over: they lie folded under these words. */
  readonly over?: number
  readonly overSays?: (left: number) => string
  readonly add: string
  /** One more as it is at first; null where there can be no more. */
  readonly next: () => T | null
  /** What one is called where it is left out. */
  readonly called: (row: T) => string
  readonly onChange: (rows: readonly T[]) => void
  readonly children: (row: T, change: (part: Partial<T>) => void) => ReactNode
}) {
  const { t } = useTranslation()
  const place = useRef<HTMLFieldSetElement>(null)
  /** Names of the rows, so that what is being typed stays with its own when another goes. */
  const [keys, setKeys] = useState<readonly number[]>(() => rows.map((_, at) => at))
  const more = next()
  const addOne = (one: T) => {
    flushSync(() => {
      setKeys([...keys, 1 + Math.max(-1, ...keys)])
      onChange([...rows, one])
    })
    const last = [...(place.current?.querySelectorAll<HTMLElement>('.asked') ?? [])].at(-1)
    last?.querySelector<HTMLElement>('input, select, button')?.focus()
  }
  const leaveOut = (at: number) => {
    setKeys(keys.filter((_, nth) => nth !== at))
    onChange(rows.filter((_, nth) => nth !== at))
    place.current?.focus()
  }
  const asked = rows.map((row, at) => ({
    isOver: keys[at]! < over,
    field: (
      <div key={keys[at]} className="asked stack">
        {children(row, part =>
          onChange(rows.map((other, nth) => (nth === at ? { ...other, ...part } : other))),
        )}
        <div>
          <Button
            className="quiet"
            aria-label={t('common.leaveOutOf', { what: called(row) })}
            onPress={() => leaveOut(at)}
          >
            {t('common.leaveOut')}
          </Button>
        </div>
      </div>
    ),
  }))
  const past = asked.filter(({ isOver }) => isOver)
  return (
    <fieldset ref={place} tabIndex={-1} className="list-asked stack">
      <legend>{label}</legend>
      <p className="soft small">{says}</p>
      {past.length > 0 && (
        <details>
          <summary>{overSays?.(past.length)}</summary>
          {past.map(({ field }) => field)}
        </details>
      )}
      {asked.filter(({ isOver }) => !isOver).map(({ field }) => field)}
      {more !== null && (
        <div>
          <Button className="plain" onPress={() => addOne(more)}>
            {add}
          </Button>
        </div>
      )}
    </fieldset>
  )
}
