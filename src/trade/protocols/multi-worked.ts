import { ProtocolId } from '../ids.ts'
import type { Protocol } from '../protocol.ts'
import { copyProtocol } from './copy-protocol.ts'
import { allOf } from './share.ts'

const numberWords = ['two', 'three', 'four', 'five']

/**
 * Several cultivars on one tree, from the protocol for one. All must take; each cultivar gives a stick or bud, and
 * working and checking take so many times as long. The weaker cultivars are cut back less: vigour is never equal.
 * @param cultivars 2 to 5
 */
export function multiWorkedProtocol(one: Protocol, cultivars: number): Protocol {
  const words = numberWords[cultivars - 2]
  if (words === undefined)
    throw new RangeError(`multiWorkedProtocol: cultivars must be 2 to 5, got ${cultivars}`)
  const worked = one.steps.findIndex(step => step.id === 'healing')
  if (worked < 0) throw new RangeError(`multiWorkedProtocol: one must have a step "healing", got ${one.id}`)
  return copyProtocol(one, {
    id: ProtocolId.parse(`${one.id}-x${cultivars}`),
    name: `${one.name}, ${words} cultivars on one tree`,
    changes: {
      steps: one.steps.map((step, index) =>
        index !== worked
          ? step
          : {
              ...step,
              survival: allOf(
                Array.from({ length: cultivars }, () => step.survival),
                `all ${words} take; one that fails can be worked again`,
              ),
              work: step.work.map(work => ({
                ...work,
                minutesPerPlant: {
                  ...work.minutesPerPlant,
                  low: work.minutesPerPlant.low * cultivars,
                  typical: work.minutesPerPlant.typical * cultivars,
                  high: work.minutesPerPlant.high * cultivars,
                },
              })),
            },
      ),
      note: 'Label every branch. Balance the branches each year, the strongest cut most.',
    },
  })
}
