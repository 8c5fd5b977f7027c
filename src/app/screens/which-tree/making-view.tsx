import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { breakEven, usualWays, type WayMade, whichWay } from '../../../advice/index.ts'
import type { NurseryView, RateRow } from '../../../api/index.ts'
import { methodById, type Species } from '../../../trade/facts/index.ts'
import { markOfMethod } from '../../../trade/index.ts'
import { Mark } from '../../pictures/marks/mark.tsx'
import type { Format } from '../../text/format.ts'
import { useTerm } from '../../text/use-term.ts'
import { ownWays } from './own-ways.ts'

/** The same fruit from the maker's side: what one saleable tree costs by way, and what hand and bench earn. */
export function MakingView({
  species,
  nursery,
  rates,
  format,
}: {
  readonly species: Species
  readonly nursery: NurseryView
  readonly rates: readonly RateRow[]
  readonly format: Format
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const { hour, squareMetreWeek } = nursery.prices
  const made = useMemo(
    () => whichWay(ownWays(usualWays(species), nursery.kinds, rates), { hour, squareMetreWeek }),
    [species, nursery.kinds, rates, hour, squareMetreWeek],
  )
  const nameOf = ({ way }: WayMade) => term(methodById(way.protocol.method).label)
  const money = (value: number) => value.toLocaleString(format.locale, { maximumFractionDigits: 2 })
  const aSquareMetre = format.shown('a m²').to
  const columns = [
    'through',
    'taken',
    'cost',
    'labour',
    'bench',
    'months',
    'price',
    'margin',
    'hand',
    'metre',
  ] as const
  const [cheapest, ...others] = made
  if (cheapest === undefined) return <p>{t('whichTree.none')}</p>
  return (
    <div className="answer">
      <p className="soft">
        {t('whichTree.making.says', {
          hour: money(hour),
          bench: money(aSquareMetre(squareMetreWeek)),
          unit: format.areaUnit,
        })}{' '}
        {t('whichTree.making.rates')} {t('whichTree.making.guess')}
      </p>
      <section className="sheet">
        <h2>{t('whichTree.making.title')}</h2>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
        <section className="ways-scroll" tabIndex={0} aria-label={t('whichTree.making.title')}>
          <table className="ways-table">
            <thead>
              <tr>
                <th scope="col">{t('whichTree.making.way')}</th>
                {columns.map(column => (
                  <th key={column} scope="col">
                    {t(`whichTree.making.${column}`, { unit: format.areaUnit })}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {made.map(one => {
                const cells: Readonly<Record<(typeof columns)[number], string>> = {
                  through: format.share(one.through.middle),
                  taken: money(one.one.taken),
                  cost: money(one.one.cost),
                  labour: t('whichTree.making.minutes', { minutes: format.amount(one.one.minutes) }),
                  bench: t('whichTree.making.metreWeeks', {
                    amount: money(format.areaNumber(one.one.squareMetreWeeks)),
                    unit: format.areaUnit,
                  }),
                  months: t('whichTree.making.monthsSay', { months: format.number(one.one.weeks / 4.348) }),
                  price: money(one.way.price),
                  margin: money(one.margin),
                  hand: one.earnsPerSkilledDay === null ? '' : format.number(one.earnsPerSkilledDay),
                  metre:
                    one.earnsPerSquareMetreYear === null
                      ? ''
                      : format.number(aSquareMetre(one.earnsPerSquareMetreYear)),
                }
                return (
                  <tr key={one.way.protocol.id}>
                    <th scope="row">
                      <span className="way-name">
                        <Mark mark={markOfMethod(one.way.protocol.method)} size={26} />
                        <span>
                          {nameOf(one)}
                          <small>{t('whichTree.making.setUp', { amount: money(one.way.setUp) })}</small>
                        </span>
                      </span>
                    </th>
                    {columns.map(column => (
                      <td key={column} data-name={t(`whichTree.making.${column}`, { unit: format.areaUnit })}>
                        {cells[column]}
                        {column === 'through' && (
                          <small>{format.shareRange(one.through.low, one.through.high)}</small>
                        )}
                        {column === 'cost' && (
                          <small>
                            {t('whichTree.likely', { low: money(one.cost.low), high: money(one.cost.high) })}
                          </small>
                        )}
                      </td>
                    ))}
                  </tr>
                )
              })}
            </tbody>
          </table>
        </section>
      </section>
      <section className="sheet">
        <h2>{t('whichTree.making.breakEven')}</h2>
        <ul className="sentences">
          {others.length === 0 && <li>{t('whichTree.making.none')}</li>}
          {others.map(other => {
            const found = breakEven(cheapest, other)
            return (
              <li key={other.way.protocol.id}>
                {found.kind === 'from'
                  ? t('whichTree.making.from', {
                      number: format.number(found.number),
                      below: nameOf(found.below),
                      above: nameOf(found.above),
                    })
                  : t('whichTree.making.always', {
                      cheaper: nameOf(found.cheaper),
                      other: nameOf(found.cheaper === cheapest ? other : cheapest),
                    })}
              </li>
            )
          })}
        </ul>
      </section>
    </div>
  )
}
