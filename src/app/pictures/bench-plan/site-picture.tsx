import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { BenchView } from '../../../api/index.ts'
import type { Bench } from '../../../record/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import './bench-plan.css'
import { asButton } from '../as-button.ts'
import { Picture } from '../frame/picture.tsx'
import { Hatch } from '../hatch.tsx'
import { sizeOf } from './bench-picture.tsx'
import { layOutSite, lineOver } from './site-layout.ts'

/** The whole nursery to scale: each bench filled as far as it is used. */
export function SitePicture({
  benches,
  views,
  chosen,
  aimed = null,
  onChoose,
  onAim,
}: {
  readonly benches: readonly Bench[]
  readonly views: ReadonlyMap<string, BenchView>
  readonly chosen: string | null
  /** The bench on which something in hand would be put down. */
  readonly aimed?: string | null
  readonly onChoose: (bench: string) => void
  /** While something is in hand: the bench that has the focus. */
  readonly onAim?: (bench: string) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const hatch = useId()
  const byId = new Map(benches.map(bench => [bench.id as string, bench]))
  const site = layOutSite(benches, sizeOf)
  const usedOf = (id: string) => {
    const view = views.get(id)
    const used = view?.stands.reduce((sum, { squareMetres }) => sum + squareMetres, 0) ?? 0
    return { used, area: view?.areaSquareMetres ?? byId.get(id)!.areaSquareMetres }
  }
  return (
    <Picture
      title={t('benches.plan')}
      says={site.isPlaced ? t('benches.planSays') : t('benches.noPositions')}
      numbers={() => ({
        columns: [t('benches.choose'), t('pictures.bench.area'), t('pictures.season.expected')],
        rows: benches.map(bench => {
          const { used, area } = usedOf(bench.id)
          return [
            bench.name,
            Math.round(10 * format.areaNumber(area)) / 10,
            Math.round(10 * format.areaNumber(used)) / 10,
          ]
        }),
      })}
    >
      {width => {
        const scale = Math.min((width - 4) / site.width, 480 / site.height)
        const drawn = site.places.map(place => ({
          x: 2 + place.x * scale,
          y: 18 + place.y * scale,
          width: Math.max(22, place.width * scale),
          height: Math.max(12, place.height * scale),
        }))
        return (
          <svg
            className="site"
            width={width}
            height={site.height * scale + 34}
            role="group"
            aria-label={t('benches.plan')}
          >
            <defs>
              <Hatch id={hatch} />
            </defs>
            {site.places.map((place, index) => {
              const bench = byId.get(place.id)!
              const { used, area } = usedOf(place.id)
              const share = area > 0 ? used / area : 0
              const { x, y, width: w, height: h } = drawn[index]!
              const isOver = share > 1.005
              const said = isOver ? `▴ ${format.share(share)}` : format.share(share)
              return (
                <g
                  key={place.id}
                  {...asButton(() => onChoose(place.id), place.id === chosen)}
                  className={place.id === aimed ? 'site-open aimed' : 'site-open'}
                  data-bench={place.id}
                  {...(onAim !== undefined && { onFocus: () => onAim(place.id) })}
                  aria-label={`${bench.name}: ${t('benches.used', { used: format.area(used), area: format.area(area) })}`}
                >
                  <title>{bench.name}</title>
                  <rect x={x} y={y} width={w} height={h} className="site-bench" />
                  <rect
                    x={x + 1}
                    y={y + 1}
                    width={Math.max(0, (w - 2) * Math.min(1, share))}
                    height={h - 2}
                    {...(isOver ? { fill: `url(#${hatch})` } : { className: 'site-fill' })}
                  />
                  <text
                    x={x}
                    y={y - 5}
                    className={
                      isOver ? 'site-name warn' : place.id === chosen ? 'site-name strong' : 'site-name'
                    }
                  >
                    {lineOver(drawn[index]!, said, bench.name, drawn, width)}
                  </text>
                </g>
              )
            })}
          </svg>
        )
      }}
    </Picture>
  )
}
