import { type PartnerNeed, TREES_TO_A_PARTNER } from '../assumptions/partner.ts'
import { taken } from '../assumptions/taken.ts'
import type { TreeFigures } from '../assumptions/tree-figures.ts'
import type { Question } from '../question.ts'
import type { TreeWay } from '../ways.ts'

/** How many trees stand, how much room each takes, how big it grows. */
export interface Stand {
  readonly trees: number
  /** Partners planted for pollination, beside the trees. */
  readonly partners: number
  /** Ground that one tree takes at its usual spacing, in square metres. */
  readonly spaceEach: number
  /** Canopy of one tree in full growth, where it stands. */
  readonly canopyEach: number
  readonly heightMetres: number
  /** Ground of the whole planting. */
  readonly squareMetres: number
  /** Cut back each year to keep inside the room or the height. */
  readonly pruned: boolean
  /** It would grow so much above the height allowed that pruning costs it its crop. */
  readonly tooBig: boolean
  /** The area holds fewer trees than one at the usual spacing. */
  readonly crowded: boolean
}

/** A seedling grows larger than the worked or layered tree. */
const SEEDLING_VIGOUR = taken.seedlingSize.value
const OWN_ROOT_VIGOUR = taken.ownRootSize.value

export const vigourOf = (way: TreeWay): number =>
  way.rootstock !== null ? way.rootstock.vigourShare : way.ownRoots ? OWN_ROOT_VIGOUR : SEEDLING_VIGOUR

const HELD_AT_LEAST = taken.heldAtLeast.value

/** Canopy goes by the area of the root ball, height by its depth, from those of a pot of 50 litres. */
const potCanopy = (litres: number): number => taken.potCanopy.value * (litres / 50) ** (2 / 3)
const potHeight = (litres: number): number => taken.potHeight.value * (litres / 50) ** (1 / 3)

export function standOf(way: TreeWay, question: Question, figures: TreeFigures, need: PartnerNeed): Stand {
  const { amount, ground, heightAtMostMetres, partner } = question
  const free = figures.rowSpacingMetres.typical * figures.inRowSpacingMetres.typical * vigourOf(way)
  const freeHeight = figures.heightMetres.typical * Math.sqrt(vigourOf(way))
  const inPot = ground.kind === 'container'
  const canopy = inPot ? Math.min(0.8 * free, potCanopy(ground.litres)) : free
  const tall = inPot ? Math.min(0.8 * freeHeight, potHeight(ground.litres)) : freeHeight

  const limit = heightAtMostMetres ?? Number.POSITIVE_INFINITY
  const height = Math.min(tall, limit)
  // Held lower than it would grow, a tree loses canopy in proportion.
  const held = canopy * (height / tall)
  const spaceEach = inPot ? Math.max(canopy, 0.3) : free

  const needsPartner = partner === 'planted too' && (need === 'needed' || need === 'male needed')
  const onTree = way.form === 'multi-worked'
  const partnersFor = (trees: number) => (needsPartner && !onTree ? Math.ceil(trees / TREES_TO_A_PARTNER) : 0)
  if (amount.kind === 'trees')
    return {
      trees: amount.trees,
      partners: partnersFor(amount.trees),
      spaceEach,
      canopyEach: held,
      heightMetres: height,
      squareMetres: spaceEach * (amount.trees + partnersFor(amount.trees)),
      pruned: tall > limit,
      tooBig: limit < HELD_AT_LEAST * tall,
      crowded: false,
    }

  const places = Math.floor(amount.squareMetres / spaceEach)
  const share = needsPartner && !onTree ? TREES_TO_A_PARTNER / (TREES_TO_A_PARTNER + 1) : 1
  const trees = Math.max(1, Math.floor(places * share))
  const partners = partnersFor(trees)
  const room = amount.squareMetres / (trees + partners)
  return {
    trees,
    partners,
    spaceEach,
    canopyEach: Math.min(held, room),
    heightMetres: height,
    squareMetres: amount.squareMetres,
    pruned: tall > limit || room < spaceEach,
    tooBig: limit < HELD_AT_LEAST * tall,
    crowded: room < spaceEach,
  }
}
