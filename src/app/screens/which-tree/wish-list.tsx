import { useTranslation } from 'react-i18next'
import { type Answer, type TurningPoint, WISHES, type WishId } from '../../../advice/index.ts'
import { type Says, sayInput, sayLikely, sayMoney, sayYears } from './say-figures.ts'

const WINTERS = 10

/** One sentence for each wish, with what would turn it. */
export function WishList({
  answer,
  turns,
  isLooking,
  nameOf,
  says,
}: {
  readonly answer: Answer
  readonly turns: readonly TurningPoint[]
  readonly isLooking: boolean
  readonly nameOf: (way: string) => string
  readonly says: Says
}) {
  const { t } = useTranslation()
  const { format } = says
  const kilograms = (value: number) => format.amount(format.shown('kg').to(value))
  const ahead = format.number(answer.years)
  const sentence = (wish: WishId): string => {
    const one = answer.ways.find(({ way }) => way.id === answer.best[wish])
    if (one === undefined) return t(`whichTree.noWish.${wish}`, { ahead })
    const way = nameOf(one.way.id)
    switch (wish) {
      case 'soonest': {
        const years = (value: number) => sayYears(says, value, answer.years)
        return t('whichTree.wishSays.soonest', {
          way,
          years: years(one.firstFruit.middle),
          likely: sayLikely(says, one.firstFruit, years),
        })
      }
      case 'most fruit': {
        const { low, mean, high } = one.cropSoFar
        return t('whichTree.wishSays.most fruit', {
          way,
          ahead,
          amount: format.measure(mean.at(-1)!, 'kg'),
          likely: sayLikely(says, { low: low.at(-1)!, high: high.at(-1)! }, kilograms),
        })
      }
      case 'money':
        return t('whichTree.wishSays.money', {
          way,
          value: sayMoney(says, one.presentValue.mean),
          likely: sayLikely(says, one.presentValue, value => sayMoney(says, value)),
        })
      case 'sure to live':
        return t('whichTree.wishSays.sure to live', {
          way,
          share: format.share(one.survives * one.trueShare),
          winters: format.number(Math.min(WINTERS, answer.years)),
        })
      case 'cheapest':
        return t('whichTree.wishSays.cheapest', { way, spend: sayMoney(says, one.spend) })
    }
  }
  const turnOf = (wish: WishId): string | null => {
    if (answer.best[wish] === null) return null
    const nearest = turns
      .filter(turn => turn.wish === wish)
      .reduce<TurningPoint | null>(
        (best, turn) => (best === null || turn.distance < best.distance ? turn : best),
        null,
      )
    if (nearest === null) return isLooking ? null : t('whichTree.noTurn')
    const words = {
      input: t(`whichTree.inputs.${nearest.input}`),
      to: sayInput(says, nearest.input, nearest.to),
      from: sayInput(says, nearest.input, nearest.from),
    }
    return nearest.way === null
      ? t('whichTree.turnsNone', words)
      : t('whichTree.turns', { ...words, way: nameOf(nearest.way) })
  }
  return (
    <section className="sheet wishes">
      <h2>{t('whichTree.wishes.title')}</h2>
      <dl>
        {WISHES.map(wish => {
          const turn = turnOf(wish)
          return (
            <div key={wish}>
              <dt>{t(`whichTree.wishes.${wish}`)}</dt>
              <dd>
                {sentence(wish)} {turn !== null && <span className="soft">{turn}</span>}
              </dd>
            </div>
          )
        })}
      </dl>
      <p className="soft small" aria-live="polite">
        {isLooking ? t('whichTree.looking') : ''}
      </p>
    </section>
  )
}
