import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { BenchView } from '../../../api/index.ts'
import type { Bench } from '../../../record/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import './bench-plan.css'
import { fitted } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { Hatch } from '../hatch.tsx'
import { MarkStrokes } from '../marks/mark.tsx'
import { BenchBlock, type Hand, isMovable } from './bench-block.tsx'
import { fillBench } from './fill-layout.ts'

/** A bench without its measures is drawn four times as long as it is wide. */
export const sizeOf = (bench: Bench): { readonly length: number; readonly width: number } => {
  const { lengthMetres, widthMetres, areaSquareMetres } = bench
  if (lengthMetres !== null && widthMetres !== null) return { length: lengthMetres, width: widthMetres }
  const width = Math.sqrt(areaSquareMetres / 4)
  return { length: 4 * width, width }
}

/** One bench to scale, filled with what stands on it. */
export function BenchPicture({
  bench,
  view,
  hand,
  onOpen,
}: {
  readonly bench: Bench
  readonly view: BenchView
  /** Takes what stands here in hand; left out where it cannot be moved. */
  readonly hand?: Hand
  readonly onOpen: (batch: string) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const hatch = useId()
  const { length, width: across } = sizeOf(bench)
  const used = view.stands.reduce((sum, { squareMetres }) => sum + squareMetres, 0)
  const over = used - view.areaSquareMetres
  const size = `${format.length(length)} × ${format.length(across)}`
  const keyed = view.stands.map((stand, index) => ({
    ...stand,
    key: `${stand.batch ?? stand.start} ${index}`,
  }))
  const byKey = new Map(keyed.map(stand => [stand.key, stand]))

  return (
    <Picture
      title={bench.name}
      says={`${size}. ${t('benches.used', { used: format.area(used), area: format.area(view.areaSquareMetres) })}${
        over > 0.05 ? `; ${t('pictures.bench.over', { area: format.area(over) })}` : ''
      }.`}
      numbers={() => ({
        columns: [
          t('pictures.bench.batch'),
          t('pictures.bench.kind'),
          t('pictures.bench.plants'),
          `${t('pictures.bench.area')} (${format.areaUnit})`,
        ],
        rows: keyed.map(({ name, kindName, number, squareMetres, expected }) => [
          name || t('pictures.bench.planned'),
          expected ? `${kindName} *` : kindName,
          number,
          Math.round(10 * format.areaNumber(squareMetres)) / 10,
        ]),
      })}
    >
      {width => {
        const ratio = across / length
        const scale = Math.min((width - 4) / length, 420 / across)
        const w = length * scale
        const h = Math.max(40, length * ratio * scale)
        const vertical = h / across
        const { blocks, filledTo } = fillBench(
          keyed.map(({ key, squareMetres }) => ({ id: key, area: squareMetres })),
          length * (view.areaSquareMetres / Math.max(1e-9, length * across)),
          across,
        )
        return (
          <svg
            className="bench"
            width={width}
            height={h + (over > 0.05 ? 42 : 26)}
            role="group"
            aria-label={t('pictures.bench.aria', {
              name: bench.name,
              size,
              used: format.area(used),
              area: format.area(view.areaSquareMetres),
            })}
          >
            <defs>
              <Hatch id={hatch} />
            </defs>
            {blocks.map(block => {
              const stand = byKey.get(block.id)!
              const x = 2 + block.x * scale
              const y = 2 + block.y * vertical
              const bw = Math.max(1, block.width * scale)
              const bh = Math.max(1, block.height * vertical)
              const roomy = bw > 74 && bh > 44
              const label = `${stand.name || t('pictures.bench.planned')}: ${format.number(stand.number)} ${stand.kindName}, ${format.area(stand.squareMetres)}`
              const inside = (
                <>
                  <rect
                    x={x}
                    y={y}
                    width={bw}
                    height={bh}
                    className={stand.expected ? 'bench-block expected' : 'bench-block'}
                  />
                  {bw > 30 && bh > 28 && (
                    <svg x={x + 5} y={y + 5} width={20} height={20} viewBox="0 0 34 34" aria-hidden="true">
                      <MarkStrokes mark={stand.mark} />
                    </svg>
                  )}
                  {roomy && (
                    <>
                      <text x={x + 30} y={y + 20} className="strong">
                        {fitted(stand.name || t('pictures.bench.planned'), Math.floor((bw - 32) / 8))}
                      </text>
                      <text x={x + 6} y={y + 40}>
                        {format.number(stand.number)}
                      </text>
                      {bh > 62 && (
                        <text x={x + 6} y={y + 57} className="soft">
                          {fitted(stand.kindName, Math.floor((bw - 10) / 6.6))}
                        </text>
                      )}
                    </>
                  )}
                  <title>{label}</title>
                </>
              )
              return stand.batch === null ? (
                <g key={block.id} role="img" aria-label={label}>
                  {inside}
                </g>
              ) : (
                <BenchBlock
                  key={block.id}
                  label={label}
                  stand={stand}
                  {...(hand && isMovable(stand) && { hand })}
                  onOpen={() => onOpen(stand.batch!)}
                >
                  {inside}
                </BenchBlock>
              )
            })}
            {over > 0.05 && (
              <OverTag
                x={2 + w}
                y={h + 40}
                hatch={hatch}
                words={t('pictures.bench.over', { area: format.area(over) })}
              />
            )}
            <rect x={2} y={2} width={w} height={h} className="bench-edge" />
            <text x={2} y={h + 20} className="soft">
              {over > 0.05
                ? size
                : `${size} · ${t('pictures.bench.free', { area: format.area(Math.max(0, -over)) })}`}
            </text>
            {filledTo === 0 && (
              <text x={w / 2} y={h / 2 + 6} textAnchor="middle" className="soft">
                {t('benches.empty')}
              </text>
            )}
          </svg>
        )
      }}
    </Picture>
  )
}

const LETTER = 7.6

/** What does not fit, hatched beyond the far end of the bench: on it, it would hide what stands there. */
function OverTag({
  x,
  y,
  hatch,
  words,
}: {
  readonly x: number
  readonly y: number
  readonly hatch: string
  readonly words: string
}) {
  const width = words.length * LETTER + 26
  return (
    <g>
      <rect x={x - width} y={y - 34} width={width} height={34} fill={`url(#${hatch})`} className="too-much" />
      <rect x={x - width + 6} y={y - 28} width={width - 12} height={22} className="bench-over-ground" />
      <text x={x - width / 2} y={y - 12} textAnchor="middle" className="warn">
        {words}
      </text>
    </g>
  )
}
