import { useTranslation } from 'react-i18next'
import { useFormat } from '../../text/use-format.tsx'
import './funnel.css'
import { fitted } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { FUNNEL_HEIGHT, type FunnelPoint, layOutFunnel } from './funnel-layout.ts'

/** With what it was counted from. */
export type CountedPoint = FunnelPoint & {
  readonly batches: number
  readonly entered: number
  readonly survived: number
}

const LEFT = 52

/** A round point lies within the limits, a diamond outside the nearer pair, a square outside both. */
const shapeOf = (standing: FunnelPoint['standing'], x: number, y: number) =>
  standing === 'within' ? (
    <circle cx={x} cy={y} r={4.5} className="funnel-point" />
  ) : standing === 'above' || standing === 'below' ? (
    <path d={`M${x} ${y - 6.5}l6.5 6.5l-6.5 6.5l-6.5 -6.5Z`} className="funnel-point outside" />
  ) : (
    <rect x={x - 5.5} y={y - 5.5} width={11} height={11} className="funnel-point far" />
  )

/** Who or what stands out, and what may be chance: shares over how much was counted, between limits. */
export function FunnelPicture({
  title,
  of,
  share: overall,
  points,
}: {
  readonly title: string
  readonly of: string
  readonly share: number
  readonly points: readonly CountedPoint[]
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const outside = points.filter(({ standing }) => standing !== 'within')
  const named = format.list(
    outside.slice(0, 6).map(({ name, standing }) => `${name} (${t(`pictures.funnel.standing.${standing}`)})`),
  )
  const says =
    outside.length === 0
      ? t('pictures.funnel.none')
      : t('pictures.funnel.outside', { named, count: outside.length, shown: format.number(outside.length) })
  const percent = (share: number) => Math.round(1000 * share) / 10
  return (
    <Picture
      title={title}
      says={`${says} ${t('pictures.funnel.read')}`}
      numbers={() => ({
        columns: [
          of,
          `${t('rates.column.rate')} %`,
          t('pictures.funnel.batches'),
          t('rates.column.entered'),
          t('rates.column.survived'),
          t('pictures.funnel.worth'),
          t('pictures.funnel.stands'),
        ],
        rows: points.map(({ name, share, batches, entered, survived, worth, standing }) => [
          name,
          percent(share),
          batches,
          entered,
          survived,
          Math.round(worth),
          t(`pictures.funnel.standing.${standing}`),
        ]),
      })}
    >
      {width => {
        const right = width - 8
        const { x, y, worths, shares, near, far, names } = layOutFunnel(overall, points, LEFT, right)
        const bottom = y(y.from)
        return (
          <svg
            className="funnel"
            width={width}
            height={FUNNEL_HEIGHT}
            role="group"
            aria-label={t('pictures.funnel.aria', { share: format.share(overall) })}
          >
            <path d={far.area} className="funnel-far" />
            <path d={far.edges} className="funnel-edge far" />
            <path d={near.area} className="funnel-near" />
            <path d={near.edges} className="funnel-edge" />
            {shares.map(share => (
              <g key={share}>
                <path d={`M${LEFT} ${y(share)}H${right}`} className="grid" />
                <text x={LEFT - 8} y={y(share) + 4} textAnchor="end" className="soft">
                  {format.share(share)}
                </text>
              </g>
            ))}
            {worths.map(worth => (
              <text key={worth} x={x(worth)} y={bottom + 17} textAnchor="middle" className="soft">
                {format.number(worth)}
              </text>
            ))}
            <text x={right} y={bottom + 37} textAnchor="end" className="soft">
              {t('pictures.funnel.worth')}
            </text>
            <path d={`M${LEFT} ${y(overall)}H${right}`} className="funnel-all" />
            {names.map(({ key, x: atX, y: atY, toLeft }) => (
              <text
                key={key}
                x={atX}
                y={atY}
                textAnchor={toLeft ? 'end' : 'start'}
                className="strong over-lines"
              >
                {fitted(
                  points.find(point => point.key === key)!.name,
                  Math.floor((toLeft ? atX - LEFT : right - atX) / 7),
                )}
              </text>
            ))}
            {points.map(({ key, name, share, worth, standing, batches, entered, survived }) => (
              <g
                key={key}
                role="img"
                aria-label={`${name}: ${format.share(share)}, ${t(`pictures.funnel.standing.${standing}`)}; ${t(
                  'rates.compared.batches',
                  {
                    count: batches,
                    shown: format.number(batches),
                    survived: format.number(survived),
                    entered: format.number(entered),
                  },
                )}`}
              >
                <title>{name}</title>
                {shapeOf(standing, x(worth), y(share))}
              </g>
            ))}
          </svg>
        )
      }}
    </Picture>
  )
}
