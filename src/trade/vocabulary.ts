import * as z from 'zod'

/** The ways of the hand. One drawn mark stands for each group on screens, cards and labels. */
export const MethodId = z.enum([
  'seed',
  'softwood_cutting',
  'semi_hardwood_cutting',
  'hardwood_cutting',
  'cladode_cutting',
  'root_cutting',
  'air_layer',
  'mound_layer',
  'simple_layer',
  'top_wedge_graft',
  'epicotyl_graft',
  'veneer_graft',
  'whip_tongue_graft',
  'bench_graft_hot_callus',
  'bench_graft_on_cutting',
  'double_graft_clonal',
  'bark_graft',
  'cleft_graft_topwork',
  'four_flap_graft',
  'approach_graft',
  't_bud',
  'chip_bud',
  'patch_bud',
  'sucker',
  'corm_macropropagation',
  'tissue_culture',
])
export type MethodId = z.infer<typeof MethodId>

export const MethodMark = z.enum(['seed', 'cutting', 'layer', 'graft', 'bud', 'division'])
export type MethodMark = z.infer<typeof MethodMark>

/** What kind of place a step needs. A bench offers exactly one. */
export const PlaceKind = z.enum([
  'mother block',
  'seed house',
  'mist bed',
  'hot bed',
  'healing tent',
  'cold store',
  'shade house',
  'tunnel',
  'standing ground',
  'field row',
])
export type PlaceKind = z.infer<typeof PlaceKind>

/** What a person must be able to do to be given the task. */
export const Skill = z.enum(['grafting', 'budding', 'cuttings', 'layering', 'seed', 'potting', 'general'])
export type Skill = z.infer<typeof Skill>

/** What a start takes from a mother tree, a seed lot or a standing tree. */
export const Material = z.enum([
  'seed',
  'cuttings',
  'scion sticks',
  'budwood',
  'branches',
  'shoots',
  'offsets',
  'standing trees',
])
export type Material = z.infer<typeof Material>

/** What was looked at when plants were counted: leaves are not roots. */
export const Sign = z.enum(['germinated', 'sprouted', 'rooted', 'united', 'alive', 'saleable'])
export type Sign = z.infer<typeof Sign>

/** How a tree stands on its roots, which is what a buyer asks first. */
export const TreeForm = z.enum([
  'seedling',
  'rootstock',
  'cutting-grown',
  'layered',
  'divided',
  'worked',
  'multi-worked',
  'reworked',
])
export type TreeForm = z.infer<typeof TreeForm>
