import { useTranslation } from 'react-i18next'
import { useFormat } from '../../text/use-format.tsx'
import './life.css'
import { useTerm } from '../../text/use-term.ts'
import { wrapped } from '../fitted.ts'
import { Picture } from '../frame/picture.tsx'
import { LIFE_LINE, layOutLife, lifeRoom } from './life-layout.ts'

export interface StepLived {
  readonly name: string
  readonly place: string
  readonly entered: number
  readonly left: number
  readonly lost: number
  /** How many stand in it now, and where since when. */
  readonly now: number
  readonly where: string
}

/** A batch's life as a strip of steps: as tall as the number that came in, narrowing by what was lost. */
export function LifePicture({
  title,
  begun,
  steps,
}: {
  readonly title: string
  readonly begun: number
  readonly steps: readonly StepLived[]
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const most = Math.max(1, begun, ...steps.map(({ entered }) => entered))
  const did = (step: StepLived) =>
    (['entered', 'left', 'lost'] as const)
      .map(what => t(`batch.stepDid.${what}`, { number: format.number(step[what]) }))
      .join(', ')
  const state = ({ now, entered }: StepLived) => (now > 0 ? 'now' : entered > 0 ? 'passed' : 'ahead')
  const stands = (step: StepLived) =>
    step.now > 0
      ? t('batch.stepNow', { count: step.now, shown: format.number(step.now) })
      : t(state(step) === 'ahead' ? 'batch.stepAhead' : 'batch.stepDone')

  /** Each line that is said of a step, with how it looks. */
  const linesOf = (step: StepLived, letters: number) => [
    ...wrapped(term(step.name), letters).map(says => ({ says, look: 'strong' })),
    { says: step.place, look: 'soft' },
    ...(step.entered > 0 ? wrapped(did(step), letters).map(says => ({ says, look: '' })) : []),
    { says: stands(step), look: step.now > 0 ? 'life-now' : 'soft' },
    ...(step.now > 0 ? wrapped(step.where, letters).map(says => ({ says, look: 'soft' })) : []),
  ]

  return (
    <Picture
      title={title}
      numbers={() => ({
        columns: [
          t('pictures.ladder.rung'),
          t('pictures.life.place'),
          t('pictures.life.entered'),
          t('pictures.life.left'),
          t('pictures.life.lost'),
          t('pictures.life.now'),
          t('pictures.life.where'),
        ],
        rows: steps.map(({ name, place, entered, left, lost, now, where }) => [
          term(name),
          place,
          entered,
          left,
          lost,
          now,
          where,
        ]),
      })}
    >
      {width => {
        const { letters } = lifeRoom(steps.length, width)
        const said = steps.map(step => linesOf(step, letters))
        const layout = layOutLife(
          steps.map(({ entered, lost }, index) => ({
            entered: entered / most,
            out: Math.max(0, entered - lost) / most,
            lines: said[index]!.length,
          })),
          width,
        )
        return (
          <svg
            className="life"
            width={width}
            height={layout.height}
            role="img"
            aria-label={steps
              .map(step =>
                [term(step.name), step.entered > 0 ? did(step) : '', stands(step)].filter(Boolean).join(', '),
              )
              .join('; ')}
          >
            {layout.steps.map(({ x, y, band }, index) => (
              <g key={steps[index]!.name}>
                <path d={band} className={`life-band ${state(steps[index]!)}`} />
                {said[index]!.map(({ says, look }, line) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a line has no other name
                  <text key={line} x={x} y={y + line * LIFE_LINE} className={look}>
                    {says}
                  </text>
                ))}
              </g>
            ))}
          </svg>
        )
      }}
    </Picture>
  )
}
