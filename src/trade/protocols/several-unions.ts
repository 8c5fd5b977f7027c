import { ProtocolId } from '../ids.ts'
import type { Protocol } from '../protocol.ts'
import { copyProtocol } from './copy-protocol.ts'
import { allOf } from './share.ts'

/** What is worked on one stock: how many cultivars, and whether a piece of another stands between. */
export interface Unions {
  readonly cultivars: number
  readonly hasInterstem: boolean
}

export const ONE_UNION: Unions = { cultivars: 1, hasInterstem: false }

const numberOf = ({ cultivars, hasInterstem }: Unions): number => cultivars + (hasInterstem ? 1 : 0)

export const MOST_CULTIVARS = 5

/** The id of the protocol for so many unions, made from the one for one. */
export const unionsId = (id: string, { cultivars, hasInterstem }: Unions): ProtocolId =>
  ProtocolId.parse(
    [id, ...(cultivars > 1 ? [`x${cultivars}`] : []), ...(hasInterstem ? ['interstem'] : [])].join('-'),
  )

const sticks = (one: Pick<Protocol, 'takes'>) =>
  one.takes.find(taking => taking.what === 'material' && taking.part === 'scion')

/**
 * Whether a protocol for one union can be made one for these, in one go: sticks or buds set on a stock, which then heals.
 * A bud has no room for a piece between: an interstem is budded in one summer, and worked in the next.
 */
export function canBeUnited(one: Pick<Protocol, 'takes' | 'steps'>, unions: Unions): boolean {
  const scion = sticks(one)
  const fits = unions.hasInterstem ? ['scion sticks'] : ['scion sticks', 'budwood']
  return (
    unions.cultivars <= MOST_CULTIVARS &&
    scion?.what === 'material' &&
    fits.includes(scion.material) &&
    one.takes.some(({ what }) => what === 'rootstock') &&
    one.steps.some(({ id }) => id === 'healing')
  )
}

/**
 * Several cultivars on one tree, a piece of another between stock and scion, or both, from the protocol for one union. All
 * must take; each cultivar and the piece between give a stick, and working and checking take so many times as long. The
 * weaker cultivars are cut back less: vigour is never equal. Common practice, no source.
 * @param unions 2 to 5 cultivars, or from 1 on with an interstem
 */
export function severalUnions(one: Protocol, unions: Unions): Protocol {
  const { cultivars, hasInterstem } = unions
  const number = numberOf(unions)
  if (number < 2 || cultivars < 1 || cultivars > MOST_CULTIVARS)
    throw new RangeError(
      `severalUnions: cultivars must be 2 to ${MOST_CULTIVARS}, or 1 with an interstem, got ${cultivars}`,
    )
  if (!canBeUnited(one, unions))
    throw new RangeError(`severalUnions: one must set scions on a stock and let them heal, got ${one.id}`)
  const scion = sticks(one)!
  return copyProtocol(one, {
    id: unionsId(one.id, unions),
    name: [
      one.name,
      ...(cultivars > 1 ? [`${cultivars} cultivars on one tree`] : []),
      ...(hasInterstem ? ['with an interstem'] : []),
    ].join(', '),
    changes: {
      takes: hasInterstem
        ? [...one.takes, { ...scion, part: 'interstem' } as (typeof one.takes)[number]]
        : one.takes,
      steps: one.steps.map(step =>
        step.id !== 'healing'
          ? step
          : {
              ...step,
              survival: allOf(
                Array.from({ length: number }, () => step.survival),
                `all ${number} unions take; one that fails can be worked again`,
              ),
              work: step.work.map(work => ({
                ...work,
                minutesPerPlant: {
                  ...work.minutesPerPlant,
                  low: work.minutesPerPlant.low * number,
                  typical: work.minutesPerPlant.typical * number,
                  high: work.minutesPerPlant.high * number,
                },
              })),
            },
      ),
      note: [
        ...(hasInterstem ? ['Set the piece between the right way up, all pieces of one length.'] : []),
        ...(cultivars > 1
          ? ['Label every branch. Balance the branches each year, the strongest cut most.']
          : []),
      ].join(' '),
    },
  })
}
