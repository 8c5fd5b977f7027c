import { type ReactNode, useEffect, useRef } from 'react'
import { useTranslation } from 'react-i18next'
import type { LineageView } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useSayPart } from '../../text/use-say-part.ts'
import './lineage.css'
import { asButton } from '../as-button.ts'
import { wrappedIn } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { MarkStrokes } from '../marks/mark.tsx'
import { type LineageSize, layOutLineage, NARROW, WIDE, widened } from './lineage-layout.ts'

type Thing = LineageView['things'][number]
const PHONE = 480
/** Round the drawing, for the edges of its boxes. */
const EDGE = 8
/** Of the words in a box: a line of them, a letter of the name, one of what is told below it, and where they begin and end. */
const LINE = 17
const NAME_LETTER = 6.9
const DETAIL_LETTER = 6.4
const BEFORE = 16
const AFTER_MARK = 40
const LEFT_FREE = 12
const keyOf = ({ what, id }: { readonly what: string; readonly id: string }) => `${what} ${id}`

/** A family drawn: what it came from on one side, what came of it on the other. */
export function LineagePicture({
  title,
  view,
  onOpen,
}: {
  readonly title: string
  readonly view: LineageView
  readonly onOpen: (thing: Thing) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const partOf = useSayPart()
  const laidOut = (size: LineageSize) =>
    layOutLineage(
      view.things.map(thing => ({ key: keyOf(thing), generation: thing.generation })),
      view.links.map(({ from, to }) => ({ from: keyOf(from), to: keyOf(to) })),
      size,
    )
  const own = keyOf(view.of)
  return (
    <Picture
      title={title}
      numbers={() => ({
        columns: [
          t('pictures.lineage.generation'),
          t('pictures.lineage.name'),
          t('pictures.lineage.as'),
          t('pictures.lineage.number'),
        ],
        rows: [...view.things]
          .sort((a, b) => a.generation - b.generation)
          .map(({ generation, name, detail, what, number }) => [
            generation,
            [name, detail].filter(Boolean).join(', '),
            t(`lineage.what.${what}`),
            Math.round(number),
          ]),
      })}
    >
      {width => {
        const generations = new Set(view.things.map(({ generation }) => generation)).size
        const { width: box, across } = widened(width < PHONE ? NARROW : WIDE, generations, width - EDGE)
        const words = new Map(
          view.things.map(thing => {
            const room = box - (thing.mark === null ? BEFORE : AFTER_MARK) - LEFT_FREE
            const name = wrappedIn(
              `${thing.onHold ? '✕ ' : ''}${thing.name}`,
              Math.floor(room / NAME_LETTER),
              2,
            )
            const detail = [thing.number > 0 ? format.number(thing.number) : '', thing.detail]
              .filter(Boolean)
              .join(' · ')
            return [keyOf(thing), { name, detail: wrappedIn(detail, Math.floor(room / DETAIL_LETTER), 2) }]
          }),
        )
        const lines = Math.max(...[...words.values()].map(({ name, detail }) => name.length + detail.length))
        const size = { width: box, height: LINE * Math.max(2, lines) + EDGE * 2, across }
        const layout = laidOut(size)
        const middle = layout.places.get(own)!.x + size.width / 2
        return (
          <Scroll title={title} to={middle - width / 2}>
            <svg
              className="family"
              width={layout.width + EDGE}
              height={layout.height + EDGE}
              role="group"
              aria-label={t('pictures.lineage.aria', { name: title })}
            >
              {view.links.map(({ from, to, as, number }) => {
                const a = layout.places.get(keyOf(from))
                const b = layout.places.get(keyOf(to))
                if (a === undefined || b === undefined) return null
                const [x1, y1, x2, y2] = [
                  a.x + size.width + 4,
                  a.y + size.height / 2 + 4,
                  b.x + 4,
                  b.y + size.height / 2 + 4,
                ]
                const bend = (x1 + x2) / 2
                return (
                  <path
                    key={`${keyOf(from)} ${keyOf(to)} ${as}`}
                    d={`M${x1} ${y1}C${bend} ${y1} ${bend} ${y2} ${x2} ${y2}`}
                    className={
                      as === 'rootstock' || as === 'interstem' ? 'lineage-link stock' : 'lineage-link'
                    }
                  >
                    <title>
                      {t('lineage.links.went', { number: format.number(number), as: partOf(as) })}
                    </title>
                  </path>
                )
              })}
              {view.things.map(thing => {
                const place = layout.places.get(keyOf(thing))!
                const { name, detail } = words.get(keyOf(thing))!
                const canOpen = thing.what === 'batch' || thing.what === 'mother'
                const label = `${t(`lineage.what.${thing.what}`)} ${thing.name}, ${thing.detail}${thing.onHold ? `, ${t('common.onHold')}` : ''}`
                return (
                  <g
                    key={keyOf(thing)}
                    transform={`translate(${place.x + 4} ${place.y + 4})`}
                    className={canOpen ? 'lineage-thing open' : 'lineage-thing'}
                    aria-label={label}
                    {...(canOpen ? asButton(() => onOpen(thing)) : { role: 'img' })}
                  >
                    <rect
                      width={size.width}
                      height={size.height}
                      rx={thing.what === 'mother' ? size.height / 2 : 2}
                      className={keyOf(thing) === own ? 'lineage-box own' : 'lineage-box'}
                    />
                    {thing.mark !== null && (
                      <svg
                        x={8}
                        y={size.height / 2 - 12}
                        width={24}
                        height={24}
                        viewBox="0 0 34 34"
                        aria-hidden="true"
                      >
                        <MarkStrokes mark={thing.mark} />
                      </svg>
                    )}
                    {[...name, ...detail].map((line, at) => (
                      <text
                        // biome-ignore lint/suspicious/noArrayIndexKey: two lines may say the same
                        key={at}
                        x={thing.mark === null ? BEFORE : AFTER_MARK}
                        y={size.height / 2 + LINE * (at - (name.length + detail.length) / 2) + 13}
                        className={at >= name.length ? 'soft' : thing.onHold ? 'warn' : 'strong'}
                      >
                        {line}
                      </text>
                    ))}
                    <title>{label}</title>
                  </g>
                )
              })}
            </svg>
          </Scroll>
        )
      }}
    </Picture>
  )
}

/** A wide family is moved so that the one it is of stands in the middle. */
function Scroll({
  title,
  to,
  children,
}: {
  readonly title: string
  readonly to: number
  readonly children: ReactNode
}) {
  const place = useRef<HTMLElement>(null)
  useEffect(() => place.current?.scrollTo({ left: to }), [to])
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section ref={place} className="lineage-scroll" tabIndex={0} aria-label={title}>
      {children}
    </section>
  )
}
