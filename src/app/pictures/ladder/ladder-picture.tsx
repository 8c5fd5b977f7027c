import { useTranslation } from 'react-i18next'
import type { RateUsed, Rung } from '../../../planning/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekName } from '../../text/use-week-said.ts'
import './ladder.css'
import { useTerm } from '../../text/use-term.ts'
import { asButton } from '../as-button.ts'
import { wrapped } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { LADDER, layOutLadder } from './ladder-layout.ts'
import { rungsDown } from './rungs-down.ts'

/** Of a rung's name, and what its week takes beside it. */
const LETTER = 7.4
const WEEK_ROOM = 60

/** The count-back of one batch or start: from what is needed up to what has to be worked. */
export function LadderPicture({
  title,
  says,
  rungs: given,
  before,
  ask,
}: {
  readonly title: string
  readonly says?: string
  readonly rungs: readonly Rung[]
  /** The same count-back as it was before: told beside each rung where the two differ. */
  readonly before?: readonly Rung[]
  /** What it does to press the rate of a step; null where it cannot be pressed. */
  readonly ask?: (rung: Rung, rate: RateUsed) => (() => void) | null
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const down = rungsDown(given)
  const rungs = down.map(({ rung }) => rung)

  const sourceOf = ({ from, batches }: RateUsed): string =>
    from === 'facts'
      ? t('pictures.ladder.from.facts')
      : from === 'records'
        ? t('pictures.ladder.from.records', { count: batches, shown: format.number(batches) })
        : t('pictures.ladder.from.set')
  const rateText = (rate: RateUsed): string =>
    t('pictures.ladder.rate', {
      share: format.share(rate.mean),
      range: format.shareRange(rate.low, rate.high),
    })
  const weekText = useWeekName()
  const rateBelow = (index: number): RateUsed | null => down[index]?.rate ?? null
  const wasOf = (rung: Rung): Rung | undefined => before?.find(({ step }) => step === rung.step)
  /** Number and week of before, where they read otherwise than now. */
  const rungWas = (rung: Rung, earlier: Rung | undefined): string | null => {
    if (earlier === undefined) return null
    const [now, then] = [rung, earlier].map(one => [format.number(one.number), weekText(one.week)])
    const changed = then!.filter((text, index) => text !== now![index])
    return changed.length === 0 ? null : t('pictures.ladder.was', { shown: changed.join(', ') })
  }
  /** The mean alone where it changed, with its range where that alone did. */
  const rateWas = (rate: RateUsed, earlier: RateUsed | null | undefined): string | null => {
    if (earlier == null || rateText(earlier) === rateText(rate)) return null
    const share = format.share(earlier.mean)
    return t('pictures.ladder.was', { shown: share === format.share(rate.mean) ? rateText(earlier) : share })
  }

  return (
    <Picture
      title={title}
      {...(says === undefined ? {} : { says })}
      level={3}
      bare
      numbers={() => ({
        columns: [
          t('pictures.ladder.rung'),
          t('common.number'),
          t('pictures.season.week'),
          t('pictures.ladder.kept'),
          t('pictures.ladder.source'),
          ...(before === undefined
            ? []
            : [t('common.number'), t('pictures.season.week'), t('pictures.ladder.kept')].map(column =>
                t('pictures.ladder.before', { column }),
              )),
        ],
        rows: rungs.map((rung, index) => {
          const { name, number, week } = rung
          const earlier = wasOf(rung)
          const rate = rateBelow(index)
          return [
            term(name),
            Math.round(number),
            weekText(week),
            rate === null ? '' : rateText(rate),
            rate === null ? '' : [sourceOf(rate), term(rate.basis)].filter(Boolean).join('; '),
            ...(before === undefined
              ? []
              : [
                  earlier === undefined ? '' : Math.round(earlier.number),
                  earlier === undefined ? '' : weekText(earlier.week),
                  earlier?.rate == null ? '' : rateText(earlier.rate),
                ]),
          ]
        }),
      })}
    >
      {width => {
        const letters = Math.floor((width - WEEK_ROOM) / LETTER)
        const names = rungs.map(({ name }) => wrapped(term(name), letters))
        const layout = layOutLadder(
          rungs.map(({ number }) => number),
          width,
          rungs.map(rung => wasOf(rung)?.number ?? null),
          names.map(({ length }) => length),
        )
        return (
          <svg
            className="ladder"
            width={width}
            height={layout.height}
            role={ask === undefined ? 'img' : 'group'}
            aria-label={t('pictures.ladder.aria', {
              rungs: rungs.map(({ name, number }) => `${term(name)} ${format.number(number)}`).join(', '),
            })}
          >
            {layout.rungs.map(({ y, width: bar, was: barBefore, taper }, index) => {
              const rung = rungs[index]!
              const rate = rateBelow(index)
              const press = (rate && ask?.(rung, rate)) ?? null
              const earlier = wasOf(rung)
              const told = rungWas(rung, earlier)
              const rateTold = rate && rateWas(rate, earlier?.rate)
              const beside = taper !== null && taper.end < width - 250 ? taper.end + 18 : LADDER.left + 14
              return (
                <g key={`${rung.step} ${rung.name}`}>
                  {taper !== null && <path d={taper.path} className="ladder-taper" />}
                  <rect
                    x={LADDER.left}
                    y={y}
                    width={bar}
                    height={LADDER.bar}
                    className={index === rungs.length - 1 ? 'ladder-needed' : 'ladder-rung'}
                  />
                  <text>
                    {names[index]!.map((line, at, { length }) => (
                      <tspan
                        key={line}
                        x={LADDER.left}
                        y={y - 6 - (length - 1 - at) * LADDER.line}
                        className="strong"
                      >
                        {line}
                      </tspan>
                    ))}
                    <tspan className="soft" dx={6}>
                      {weekText(rung.week)}
                    </tspan>
                  </text>
                  {told !== null && barBefore !== null && (
                    <rect
                      x={LADDER.left}
                      y={y}
                      width={barBefore}
                      height={LADDER.bar}
                      className="ladder-before"
                    />
                  )}
                  <text x={LADDER.left + 10} y={y + 21} className="ladder-number">
                    {format.number(rung.number)}
                    {told !== null && (
                      <tspan className="ladder-was" dx={8}>
                        {told}
                      </tspan>
                    )}
                  </text>
                  {taper !== null && rate !== null && (
                    <g
                      {...(press !== null && {
                        ...asButton(press),
                        className: 'pressed',
                        'aria-label': t('pictures.ladder.ask', {
                          name: term(rung.name),
                          rate: rateText(rate),
                        }),
                      })}
                    >
                      <rect
                        x={LADDER.left}
                        y={y + LADDER.bar + 1}
                        width={width - 2 * LADDER.left}
                        height={LADDER.gap - 2}
                        className="pressed-lane"
                      />
                      <RateSign x={beside} y={taper.middle} from={rate.from} />
                      <text x={beside + 11} y={taper.middle + 4}>
                        {rateText(rate)}
                        <tspan className="soft"> · {rateTold ?? sourceOf(rate)}</tspan>
                      </text>
                    </g>
                  )}
                </g>
              )
            })}
          </svg>
        )
      }}
    </Picture>
  )
}

/** Full where your own records stand behind the rate, hollow where it is assumed, square where you set it. */
function RateSign({
  x,
  y,
  from,
}: {
  readonly x: number
  readonly y: number
  readonly from: RateUsed['from']
}) {
  if (from === 'set by the nursery')
    return <rect x={x - 4} y={y - 4} width={8} height={8} className="rate-own" />
  return <circle cx={x} cy={y} r={4} className={from === 'records' ? 'rate-own' : 'rate-assumed'} />
}
