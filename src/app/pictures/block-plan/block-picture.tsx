import { useTranslation } from 'react-i18next'
import type { MotherRow } from '../../../api/index.ts'
import { metresFromFeet } from '../../../trade/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import './block-plan.css'
import { asButton } from '../as-button.ts'
import { Picture } from '../frame/picture.tsx'
import { inRows, layOutBlock } from './block-layout.ts'
import { shareLeft } from './share-left.ts'

/** A block of mother trees to scale: each a ring as full as what it may still give this year. */
export function BlockPicture({
  block,
  rows,
  chosen,
  onChoose,
}: {
  readonly block: string
  readonly rows: readonly MotherRow[]
  readonly chosen: string | null
  readonly onChoose: (mother: string) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const isPlaced = rows.every(({ mother }) => mother.position !== null)
  const standing = isPlaced
    ? rows.map(({ mother }) => ({ id: mother.id as string, ...mother.position! }))
    : inRows(rows.map(({ mother }) => mother.id))
  /** A round length where the reader measures in feet, too. */
  const scaleMetres = format.units === 'us' ? metresFromFeet(30) : 10
  const byId = new Map(rows.map(row => [row.mother.id as string, row]))
  return (
    <Picture
      title={t('mothers.plan', { block: block || t('mothers.noBlock') })}
      says={isPlaced ? t('mothers.planSays') : t('mothers.noPositions')}
      numbers={() => ({
        columns: [
          t('mothers.column.tree'),
          t('mothers.column.cultivar'),
          t('mothers.column.left'),
          t('mothers.column.test'),
        ],
        rows: rows.map(row => [
          row.mother.name,
          row.cultivarName,
          format.share(shareLeft(row) ?? 0),
          row.lastTest === null
            ? ''
            : `${row.lastTest.test}: ${t(`mothers.lab.results.${row.lastTest.result}`)}`,
        ]),
      })}
    >
      {width => {
        const { trees, radius, height, scale } = layOutBlock(standing, width)
        const around = 2 * Math.PI * (radius - 3)
        return (
          <svg
            className="block"
            width={width}
            height={height}
            role="group"
            aria-label={t('mothers.plan', { block })}
          >
            {trees.map(({ id, x, y }) => {
              const row = byId.get(id)!
              const left = shareLeft(row)
              const stopped = row.onHold || row.retired
              return (
                <g
                  key={id}
                  {...asButton(() => onChoose(id), id === chosen)}
                  className="block-tree"
                  aria-label={`${row.mother.name}, ${row.cultivarName}${left === null ? '' : `, ${format.share(left)}`}${
                    row.onHold ? `, ${t('common.onHold')}` : row.retired ? `, ${t('mothers.retired')}` : ''
                  }`}
                >
                  <circle cx={x} cy={y} r={radius} className="block-crown" />
                  <circle cx={x} cy={y} r={radius - 3} className="block-ring" />
                  {left !== null && left > 0 && (
                    <circle
                      cx={x}
                      cy={y}
                      r={radius - 3}
                      className="block-left"
                      strokeDasharray={`${around * left} ${around}`}
                      transform={`rotate(-90 ${x} ${y})`}
                    />
                  )}
                  {stopped ? (
                    <path
                      d={`M${x - radius * 0.45} ${y - radius * 0.45}l${radius * 0.9} ${radius * 0.9}m0 ${-radius * 0.9}l${-radius * 0.9} ${radius * 0.9}`}
                      className="block-stopped"
                    />
                  ) : (
                    radius > 15 && (
                      <text x={x} y={y + 4} textAnchor="middle" className="block-name">
                        {row.mother.id.slice(-4)}
                      </text>
                    )
                  )}
                  <title>{`${row.mother.name}, ${row.cultivarName}`}</title>
                </g>
              )
            })}
            {isPlaced && (
              <g className="block-scale">
                <path d={`M4 ${height - 8}v5h${scaleMetres * scale}v-5`} className="axis" />
                <text x={10 + scaleMetres * scale} y={height - 3} className="soft">
                  {format.length(scaleMetres)}
                </text>
              </g>
            )}
          </svg>
        )
      }}
    </Picture>
  )
}
