import { useTranslation } from 'react-i18next'
import type { Answer, WayAnswer } from '../../../advice/index.ts'
import { markOfMethod } from '../../../trade/index.ts'
import { letterOf } from '../../pictures/crop/crop-layout.ts'
import { Mark } from '../../pictures/marks/mark.tsx'
import { bestOfColumns, type Says, sayLikely, sayMoney, sayYears } from './say-figures.ts'

const WINTERS = 10

/** Across a round canopy of so many square metres. */
const widthOf = (squareMetres: number): number => 2 * Math.sqrt(squareMetres / Math.PI)

/** The ways side by side: the best of each column marked, what is beaten in everything greyed with its reason. */
export function WaysTable({
  answer,
  nameOf,
  says,
  chosen,
}: {
  readonly answer: Answer
  readonly nameOf: (way: string) => string
  readonly says: Says
  readonly chosen: string | null
}) {
  const { t } = useTranslation()
  const { format } = says
  const best = bestOfColumns(answer)
  const ahead = answer.years
  const columns = ['first', 'true', 'lives', 'crop', 'height', 'spend', 'worth', 'payback'] as const
  const number = { years: format.number(ahead) }
  const heads: Readonly<Record<(typeof columns)[number], string>> = {
    first: t('whichTree.table.first'),
    true: t('whichTree.table.true'),
    lives: t('whichTree.table.lives', { years: format.number(Math.min(WINTERS, ahead)) }),
    crop: t('whichTree.table.crop', number),
    height: t('whichTree.table.height'),
    spend: t('whichTree.table.spend'),
    worth: t('whichTree.table.worth'),
    payback: t('whichTree.table.payback'),
  }
  const cells = (
    one: WayAnswer,
  ): Readonly<Record<(typeof columns)[number], readonly [string, (string | undefined)?]>> => {
    const money = (value: number) => value.toLocaleString(format.locale, { maximumSignificantDigits: 3 })
    const kilograms = (value: number) => format.amount(format.shown('kg').to(value))
    const years = (value: number) => sayYears(says, value, ahead)
    return {
      first: Number.isFinite(one.firstFruit.middle)
        ? [
            t('whichTree.years', { years: years(one.firstFruit.middle) }),
            sayLikely(says, one.firstFruit, years),
          ]
        : [t('whichTree.never', number)],
      true: [
        one.trueShare >= 0.995 ? t('whichTree.yes') : format.share(one.trueShare),
        one.seedlingsForGood === null
          ? undefined
          : Number.isFinite(one.seedlingsForGood.plant)
            ? t('whichTree.seedlings', {
                count: one.seedlingsForGood.good,
                good: format.number(one.seedlingsForGood.good),
                number: format.number(one.seedlingsForGood.plant),
              })
            : t('whichTree.neverTrue'),
      ],
      lives: [
        format.share(one.survives),
        one.halfLostBy === null
          ? undefined
          : t('whichTree.halfLost', { year: format.number(one.halfLostBy) }),
      ],
      crop: [
        format.measure(one.cropSoFar.mean.at(-1)!, 'kg'),
        one.cropSoFar.high.at(-1)! > 0
          ? sayLikely(says, { low: one.cropSoFar.low.at(-1)!, high: one.cropSoFar.high.at(-1)! }, kilograms)
          : undefined,
      ],
      height: [
        format.length(one.stand.heightMetres),
        t('whichTree.wide', { width: format.length(widthOf(one.stand.canopyEach)) }),
      ],
      spend: [sayMoney(says, one.spend)],
      worth: [
        sayMoney(says, one.presentValue.mean),
        [
          sayLikely(says, one.presentValue, value => sayMoney(says, value)),
          t('whichTree.worthToo', {
            yearly: money(one.equivalentYearlyValue),
            metre: money(format.shown('a m²').to(one.presentValuePerSquareMetre)),
            unit: format.areaUnit,
          }),
        ].join('; '),
      ],
      payback: [
        one.payback === null
          ? t('whichTree.never', number)
          : t('whichTree.inYear', { year: format.number(Math.ceil(one.payback)) }),
      ],
    }
  }
  return (
    <section className="sheet">
      <h2>{t('whichTree.table.title')}</h2>
      <p className="soft small">{t('whichTree.table.says')}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <section className="ways-scroll" tabIndex={0} aria-label={t('whichTree.table.title')}>
        <table className="ways-table">
          <thead>
            <tr>
              <th scope="col">{t('whichTree.table.way')}</th>
              {columns.map(column => (
                <th key={column} scope="col">
                  {heads[column]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {answer.ways.map((one, place) => {
              const { way, stand } = one
              const beaten = answer.beaten.find(pair => pair.way === way.id)
              const row = cells(one)
              return (
                <tr
                  key={way.id}
                  className={`${beaten === undefined ? '' : 'beaten'} ${chosen === way.id ? 'chosen' : ''}`}
                >
                  <th scope="row">
                    <span className="way-name">
                      <b>{letterOf(place)}</b>
                      <Mark mark={markOfMethod(way.method)} size={26} />
                      <span>
                        {nameOf(way.id)}
                        <small>
                          {[
                            t('common.trees', { count: stand.trees, shown: format.number(stand.trees) }),
                            ...(stand.partners > 0
                              ? [
                                  t('whichTree.partnersToo', {
                                    count: stand.partners,
                                    shown: format.number(stand.partners),
                                  }),
                                ]
                              : []),
                            ...(way.offer === null ? [] : [way.offer.label]),
                            ...(way.offer !== null && way.offer.waitYears > 0
                              ? [
                                  t('whichTree.waits', {
                                    count: Math.ceil(way.offer.waitYears),
                                    shown: format.number(Math.ceil(way.offer.waitYears)),
                                  }),
                                ]
                              : []),
                            ...one.against.map(reason => t(`whichTree.against.${reason}`)),
                          ].join(' · ')}
                        </small>
                        {beaten !== undefined && (
                          <small>{t('whichTree.beaten', { way: nameOf(beaten.by) })}</small>
                        )}
                      </span>
                    </span>
                  </th>
                  {columns.map(column => {
                    const [text, likely] = row[column]
                    const isBest = best[column]?.has(way.id) === true && beaten === undefined
                    return (
                      <td key={column} data-name={heads[column]} className={isBest ? 'best' : undefined}>
                        {text} {isBest && <span className="tag">{t('whichTree.best')}</span>}
                        {likely !== undefined && <small>{likely}</small>}
                      </td>
                    )
                  })}
                </tr>
              )
            })}
          </tbody>
        </table>
      </section>
    </section>
  )
}
