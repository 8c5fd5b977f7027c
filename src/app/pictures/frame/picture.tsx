import { type KeyboardEvent, type MouseEvent, type ReactNode, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import './picture.css'
import { markTowards, type Way } from './mark-towards.ts'
import { nearestMark } from './nearest-mark.ts'
import { type Numbers, NumbersTable } from './numbers-table.tsx'
import { SaveMenu } from './save-menu.tsx'
import { useWidth } from './use-width.ts'

/** A finger is wider than many a mark: the one that it meant is pressed, though it touched another or none. */
const takeNearest = (event: MouseEvent<HTMLElement>): void => {
  if ((event.nativeEvent as PointerEvent).pointerType !== 'touch') return
  const marks = [...event.currentTarget.querySelectorAll('svg [role="button"]')]
  const boxes = marks.map(mark => (mark.querySelector('circle, rect') ?? mark).getBoundingClientRect())
  const nearest = marks[nearestMark(boxes, event.clientX, event.clientY) ?? -1]
  if (nearest === undefined || nearest.contains(event.target as Node)) return
  event.stopPropagation()
  nearest.dispatchEvent(new window.MouseEvent('click', { bubbles: true, cancelable: true }))
}

/** From a mark that can be pressed an arrow key goes to the next that way, unless the drawing has its own way with it. */
const goTowards = (event: KeyboardEvent<HTMLElement>): void => {
  const from = event.target as Element
  if (event.defaultPrevented || event.shiftKey || event.altKey || !from.matches('svg [role="button"]')) return
  if (!/^Arrow/.test(event.key)) return
  const marks = [...event.currentTarget.querySelectorAll<SVGElement>('svg [role="button"]')]
  const next = markTowards(
    marks.map(mark => mark.getBoundingClientRect()),
    marks.indexOf(from as SVGElement),
    event.key as Way,
  )
  event.preventDefault()
  if (next !== null) marks[next]!.focus()
}

export interface PictureProps {
  /** Shown above and used as the name of saved files. */
  readonly title: string
  readonly says?: ReactNode
  readonly level?: 2 | 3
  readonly numbers: () => Numbers
  /** The drawing, at the width that it has. */
  readonly children: (width: number) => ReactNode
  readonly bare?: boolean
}

/** A drawing that carries its numbers: the same as a table one key away, and saved as SVG, PNG or CSV. */
export function Picture({ title, says, level = 2, numbers, children, bare = false }: PictureProps) {
  const { t } = useTranslation()
  const [asTable, setAsTable] = useState(false)
  const [ref, width] = useWidth()
  const Heading = `h${level}` as const
  const drawing = () => ref.current?.querySelector('svg') ?? null
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    goTowards(event)
    if (event.key !== 't' || event.ctrlKey || event.metaKey || event.altKey) return
    if (event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement) return
    event.stopPropagation()
    setAsTable(was => !was)
  }

  return (
    <figure className={bare ? 'picture' : 'picture sheet'} onKeyDown={onKeyDown}>
      <figcaption className="picture-head">
        <div>
          <Heading>{title}</Heading>
          {says !== undefined && <p className="soft small">{says}</p>}
        </div>
        <div className="picture-tools">
          <Button
            className="quiet"
            onPress={() => setAsTable(!asTable)}
            aria-pressed={asTable}
            aria-keyshortcuts="t"
            aria-label={`${t(asTable ? 'pictures.picture' : 'pictures.table')}: ${title}`}
          >
            {t(asTable ? 'pictures.picture' : 'pictures.table')}
          </Button>
          <SaveMenu
            title={title}
            drawing={drawing}
            table={() => {
              const { columns, rows } = numbers()
              return [columns, ...rows]
            }}
            isTable={asTable}
          />
        </div>
      </figcaption>
      <div ref={ref} className="picture-ground" onClickCapture={takeNearest}>
        {asTable ? <NumbersTable title={title} numbers={numbers()} /> : width > 0 && children(width)}
      </div>
    </figure>
  )
}
