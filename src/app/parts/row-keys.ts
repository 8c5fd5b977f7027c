import type { KeyboardEvent } from 'react'

const WAYS: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 }
const rowsOfPage = (): readonly Element[] => [...document.querySelectorAll('[data-rows] > li')]

/** What stands in a row for the same as this does in its own, by the class that both have. */
const sameIn = (row: Element, from: Element): HTMLElement | null => {
  const own = [...from.classList].filter(name => name !== 'active').at(-1)
  return row.querySelector<HTMLElement>(own === undefined ? 'a:not([class])' : `.${CSS.escape(own)}`)
}

/** From what can be pressed in a row of a list, the arrow keys go to the same in the next row that has it, of the next list too. */
export const onRowKeys = (event: KeyboardEvent): void => {
  const way = WAYS[event.key]
  const from = event.target as Element
  if (way === undefined || event.defaultPrevented || event.shiftKey || event.altKey) return
  if (!from.matches('a, button:not([role], [aria-haspopup])')) return
  const rows = rowsOfPage()
  for (let at = rows.findIndex(row => row.contains(from)) + way; rows[at] !== undefined; at += way) {
    const next = sameIn(rows[at]!, from)
    if (next === null) continue
    event.preventDefault()
    next.focus()
    return
  }
}
