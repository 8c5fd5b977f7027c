import type { Basis } from '../../trade/index.ts'

/** A figure that every answer rests on alike, whatever the fruit. It is shown beside the answer, and not overruled there. */
export interface Taken {
  readonly value: number
  readonly unit: 'years' | '± °C' | 'share' | 'times' | 'm²' | 'm'
  readonly basis: Basis
}

const memory = (value: number, unit: Taken['unit']): Taken => ({ value, unit, basis: 'from memory' })
const practice = (value: number, unit: Taken['unit']): Taken => ({ value, unit, basis: 'common practice' })

export const taken = {
  /** From tender youth to full hardiness. */
  hardening: memory(5, 'years'),
  hardeningOfSeedlings: memory(4, 'years'),
  /** Roots in a container meet the frost from all sides: so much more tender. */
  inContainer: practice(3, '± °C'),
  /** A cover over a young tree on frosty nights keeps off so much, for so long. */
  cover: practice(2.5, '± °C'),
  covered: practice(4, 'years'),
  wall: practice(2, '± °C'),
  /** So much beyond what kills the top, the roots die too; less in a container. */
  rootsDie: memory(4, '± °C'),
  rootsDieInContainer: memory(2, '± °C'),
  /** So near to its limit a tree loses most of the year's crop: this share is left. */
  singed: memory(2, '± °C'),
  singedCrop: memory(0.3, 'share'),
  /** Trees killed to the ground that come again from their own roots, and the share of the first time in which they bear. */
  sprouts: memory(0.6, 'share'),
  sproutsOfSeedlings: memory(0.7, 'share'),
  again: memory(0.8, 'share'),
  /** A scion on standing roots bears after this share of a young tree's years; a layer, bearing wood from the start. */
  reworked: practice(0.65, 'share'),
  layered: practice(0.9, 'share'),
  /** Trees blown over in a year in open ground. */
  blown: memory(0.003, 'share'),
  blownWithoutTaproot: memory(0.012, 'share'),
  sheltered: memory(0.5, 'times'),
  windy: memory(2.5, 'times'),
  staked: memory(0.4, 'times'),
  /** Containers dry out: trees lost to it in a year. */
  dried: memory(0.01, 'share'),
  /** Against the full-sized worked tree. */
  seedlingSize: practice(1.25, 'times'),
  ownRootSize: memory(0.95, 'times'),
  /** Held below this share of its height, a tree answers with shoots instead of fruit. */
  heldAtLeast: practice(0.75, 'share'),
  /** Of a pot of 50 litres; canopy goes by the area of the root ball, height by its depth. */
  potCanopy: memory(1.1, 'm²'),
  potHeight: memory(1.8, 'm'),
  /** How much the months, and the crops, differ from year to year: standard deviations. */
  warmthOfYears: memory(1.2, '± °C'),
  cropOfYears: memory(0.25, 'share'),
  /** The crop falls to nothing where chill is this share of the need, or summer so much short of it. */
  noCropAtChill: memory(0.5, 'share'),
  noCropAtShort: memory(5, '± °C'),
} as const satisfies Readonly<Record<string, Taken>>
export type TakenKey = keyof typeof taken
