import { useTranslation } from 'react-i18next'
import type { Answer } from '../../../advice/index.ts'
import type { Format } from '../../text/format.ts'
import { asButton } from '../as-button.ts'
import { fitted } from '../fitted.ts'
import './crop.css'
import { Picture } from '../frame/picture.tsx'
import { LEGEND_LINE, layOutCrop, layOutLegend, letterOf } from './crop-layout.ts'

/**
 * How much of the wanted fruit each way has given by each year, and which way leads from when. Its legend is in it: who reads with
 * fingers or keys picks there what the drawing brings forward.
 */
export function CropPicture({
  answer,
  chosen,
  onChoose,
  nameOf,
  format,
}: {
  readonly answer: Answer
  readonly chosen: string | null
  readonly onChoose: (way: string | null) => void
  readonly nameOf: (way: string) => string
  readonly format: Format
}) {
  const { t } = useTranslation()
  const weight = format.shown('kg')
  const leads = answer.leaders.map(({ fromYear, way }) =>
    t('whichTree.leadsFrom', { way: nameOf(way), year: format.number(fromYear) }),
  )
  const says = leads.length === 0 ? t('whichTree.noCrop') : leads.join('; ')
  return (
    <Picture
      title={t('whichTree.chart', { years: format.number(answer.years) })}
      says={`${says}.`}
      numbers={() => ({
        columns: [
          t('whichTree.year'),
          ...answer.ways.flatMap(({ way }) => [
            `${nameOf(way.id)}, ${weight.unit}: ${t('whichTree.expected')}`,
            `${nameOf(way.id)}: ${t('whichTree.low')}`,
            `${nameOf(way.id)}: ${t('whichTree.high')}`,
          ]),
        ],
        rows: Array.from({ length: answer.years + 1 }, (_, year) => [
          year,
          ...answer.ways.flatMap(({ cropSoFar }) =>
            [cropSoFar.mean, cropSoFar.low, cropSoFar.high].map(
              of => Math.round(weight.to(of[year]!) * 10) / 10,
            ),
          ),
        ]),
      })}
    >
      {width => {
        const left = 58
        const layout = layOutCrop(answer, left, width, weight.to)
        const bottom = layout.y(0)
        const strip = layout.height - 20
        const legend = layOutLegend(answer.ways.length, width, layout.height + 8)
        const { height } = legend
        return (
          <svg
            className="crop"
            width={width}
            height={height}
            viewBox={`0 0 ${width} ${height}`}
            role="group"
            aria-label={`${t('whichTree.chartAria')} ${says}`}
          >
            {layout.numbers.map(number => (
              <g key={number}>
                <path d={`M${left} ${layout.y(number)}H${layout.x(answer.years)}`} className="grid" />
                <text x={left - 8} y={layout.y(number) + 4} textAnchor="end" className="soft">
                  {format.amount(number)}
                  {number === layout.numbers.at(-1) ? ` ${weight.unit}` : ''}
                </text>
              </g>
            ))}
            {layout.years.map(year => (
              <text
                key={year}
                x={layout.x(year)}
                y={bottom + 16}
                textAnchor={year === 0 ? 'start' : year === answer.years ? 'end' : 'middle'}
                className="soft"
              >
                {year === 0 ? t('whichTree.now') : t('whichTree.yearShort', { year: format.number(year) })}
              </text>
            ))}
            {layout.lines.map(({ way, band }, place) => (
              <path
                key={way}
                d={band}
                className={`crop-band way-${place % 8}${way === chosen ? ' chosen' : ''}`}
              />
            ))}
            {layout.lines.map(({ way, line, letter, endY }, place) => (
              <g
                key={way}
                className={chosen !== null && chosen !== way ? 'crop-other' : undefined}
                onPointerEnter={() => onChoose(way)}
                onPointerLeave={() => onChoose(null)}
              >
                <path d={line} className="crop-hand" />
                <path d={line} className={`crop-line way-${place % 8}`} />
                <text x={layout.x(answer.years) + 8} y={endY + 5} className="strong">
                  {letter}
                </text>
              </g>
            ))}
            {layout.leads.map(({ way, letter, from, to }, place) => (
              <g key={from}>
                {place > 0 && <path d={`M${layout.x(from)} 8V${strip}`} className="crop-turn" />}
                <rect
                  x={layout.x(from) + 1}
                  y={strip}
                  width={Math.max(1, layout.x(to) - layout.x(from) - 2)}
                  height={18}
                  className="crop-lead"
                />
                <text x={(layout.x(from) + layout.x(to)) / 2} y={strip + 13.5} textAnchor="middle">
                  {layout.x(to) - layout.x(from) > 90 &&
                  layout.x(to) - layout.x(from) > 7 * nameOf(way).length
                    ? t('whichTree.leadsShort', { letter, way: nameOf(way) })
                    : letter}
                </text>
              </g>
            ))}
            {answer.ways.map(({ way }, place) => {
              const { x, y, room } = legend.places[place]!
              return (
                <g
                  key={way.id}
                  className={chosen === way.id ? 'crop-key chosen' : 'crop-key'}
                  aria-label={`${letterOf(place)} ${nameOf(way.id)}`}
                  {...asButton(() => onChoose(chosen === way.id ? null : way.id), chosen === way.id)}
                >
                  <rect x={x} y={y} width={room} height={LEGEND_LINE - 4} />
                  <path d={`M${x + 6} ${y + 16}h30`} className={`crop-line way-${place % 8}`} />
                  <text x={x + 44} y={y + 21}>
                    <tspan className="strong">{letterOf(place)}</tspan>
                    <tspan dx={7}>{fitted(nameOf(way.id), Math.floor((room - 70) / 7))}</tspan>
                  </text>
                  <title>{nameOf(way.id)}</title>
                </g>
              )
            })}
          </svg>
        )
      }}
    </Picture>
  )
}
