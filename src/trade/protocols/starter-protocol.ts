import { type QuantityKey, quantityByKey } from '../facts/quantity.ts'
import { type Importance, type Species, wayOf } from '../facts/species.ts'
import { type CaliperGrowth, Protocol, type Setting } from '../protocol.ts'
import type { MethodId } from '../vocabulary.ts'
import { clonalDoubleGraft, cuttingGraft, hotCallusGraft, whipAndTongue } from './bench-graft.ts'
import { budding } from './bud.ts'
import { cautionsOf } from './cautions.ts'
import { cladodeCutting, hardwoodCutting, mistCutting, rootCutting } from './cutting.ts'
import { cormPlantlets, flaskPlantlets, offset } from './division.ts'
import type { Draft } from './draft.ts'
import { airLayer, moundLayer, simpleLayer } from './layer.ts'
import { approachGraft, epicotylGraft, topGraft, veneerGraft } from './pot-graft.ts'
import { rework } from './rework.ts'
import { seedling } from './seedling.ts'
import { measure, type Product, type Start, startOf } from './start.ts'

const family: Readonly<Record<MethodId, (start: Start) => Draft>> = {
  seed: seedling,
  softwood_cutting: mistCutting,
  semi_hardwood_cutting: mistCutting,
  hardwood_cutting: hardwoodCutting,
  cladode_cutting: cladodeCutting,
  root_cutting: rootCutting,
  air_layer: airLayer,
  mound_layer: moundLayer,
  simple_layer: simpleLayer,
  top_wedge_graft: topGraft,
  epicotyl_graft: epicotylGraft,
  veneer_graft: veneerGraft,
  whip_tongue_graft: whipAndTongue,
  bench_graft_hot_callus: hotCallusGraft,
  bench_graft_on_cutting: cuttingGraft,
  double_graft_clonal: clonalDoubleGraft,
  bark_graft: rework,
  cleft_graft_topwork: rework,
  four_flap_graft: rework,
  approach_graft: approachGraft,
  t_bud: budding,
  chip_bud: budding,
  patch_bud: budding,
  sucker: offset,
  corm_macropropagation: cormPlantlets,
  tissue_culture: flaskPlantlets,
}

/** Own-root methods by which a rootstock can be raised. */
const raisesRootstocks: ReadonlySet<MethodId> = new Set<MethodId>([
  'seed',
  'softwood_cutting',
  'semi_hardwood_cutting',
  'hardwood_cutting',
  'root_cutting',
  'mound_layer',
])

/** What the facts say a way is for: a tree, a rootstock, or both. */
export function productsOf(species: Species, method: MethodId): readonly Product[] {
  const role = wayOf(species, method)?.role ?? ''
  if (!raisesRootstocks.has(method) || !role.includes('rootstock')) return ['tree']
  return role.includes('own-root') ? ['tree', 'rootstock'] : ['rootstock']
}

const NINETY_PER_CENT = 2 * 1.645

/** Stems thicken evenly from sowing to the typical workable stem; nine of ten lie between its low and high. */
function caliperOf(start: Start, steps: Draft['steps']): CaliperGrowth | null {
  if (start.product !== 'rootstock') return null
  const stem = start.species.rootstocks.stemDiameterMm
  const meanMmWhenReady = stem?.typical ?? 8
  const weeks = steps.reduce((sum, step) => sum + step.days.typical, 0) / 7
  return {
    meanMmWhenReady,
    mmPerWeek: meanMmWhenReady / weeks,
    spreadShare: stem === null ? 0.2 : Math.min(0.4, (stem.high - stem.low) / NINETY_PER_CENT / stem.typical),
  }
}

/** A rootstock may be worked until its mean stem is past the workable range; a tree is sold before its roots are bound. */
function usableDaysOf(start: Start, caliper: CaliperGrowth | null): number {
  if (caliper !== null) {
    const thickest = start.species.rootstocks.stemDiameterMm?.high ?? 12
    return Math.max(28, Math.round((7 * (thickest - caliper.meanMmWhenReady)) / caliper.mmPerWeek))
  }
  if (start.months.typical <= 4) return 60
  return start.isDeciduous ? 120 : 180
}

const shown: readonly QuantityKey[] = [
  'ibaPpm',
  'cuttingLengthMm',
  'nodesPerCutting',
  'scionLengthMm',
  'budsPerScion',
  'budHeightMm',
  'girdleWidthMm',
  'branchDiameterMm',
  'mediaLitresPerPlant',
  'bottomHeatCelsius',
  'mediumCelsius',
  'callusCelsius',
  'humidityPercent',
  'shadeShare',
]

const settingsOf = (start: Start): Setting[] =>
  shown.flatMap(key => {
    const figure = measure(start, key)
    return figure === undefined ? [] : [{ ...quantityByKey[key], figure }]
  })

/**
 * A whole protocol for a fruit by a method, from the facts: what a nursery begins with before it has its own.
 * Where the facts do not know the method for this fruit, general figures stand in and the cautions say so.
 */
export function starterProtocol(
  method: MethodId,
  species: Species,
  product: Product = productsOf(species, method)[0] ?? 'tree',
): Protocol {
  const start = startOf(method, species, product)
  const draft = family[method](start)
  const caliper = caliperOf(start, draft.steps)
  const ending = product === 'rootstock' ? 'rootstock' : ''
  return Protocol.parse({
    id: [species.id, method, ending]
      .filter(part => part !== '')
      .join('-')
      .replaceAll('_', '-'),
    name: [`${species.commonName}: ${start.method.label.toLowerCase()}`, ending]
      .filter(part => part !== '')
      .join(', '),
    version: 1,
    method,
    species: species.id,
    basedOn: null,
    window: start.window,
    usableDays: usableDaysOf(start, caliper),
    caliper,
    cautions: cautionsOf(start, draft.steps),
    settings: settingsOf(start),
    ...draft,
  })
}

/** All the ways that the facts know for a fruit, the commonest first. Experimental ones only when asked for. */
export function starterProtocols(species: Species, withExperimental = false): Protocol[] {
  const order: readonly Importance[] = ['main', 'common', 'minor', 'experimental']
  return [...species.ways]
    .filter(way => withExperimental || way.importance !== 'experimental')
    .sort((a, b) => order.indexOf(a.importance) - order.indexOf(b.importance))
    .flatMap(way =>
      productsOf(species, way.method).map(product => starterProtocol(way.method, species, product)),
    )
}
