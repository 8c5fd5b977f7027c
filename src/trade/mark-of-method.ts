import type { MethodId, MethodMark, TreeForm } from './vocabulary.ts'

const markByMethod: Readonly<Record<MethodId, MethodMark>> = {
  seed: 'seed',
  softwood_cutting: 'cutting',
  semi_hardwood_cutting: 'cutting',
  hardwood_cutting: 'cutting',
  cladode_cutting: 'cutting',
  root_cutting: 'cutting',
  air_layer: 'layer',
  mound_layer: 'layer',
  simple_layer: 'layer',
  top_wedge_graft: 'graft',
  epicotyl_graft: 'graft',
  veneer_graft: 'graft',
  whip_tongue_graft: 'graft',
  bench_graft_hot_callus: 'graft',
  bench_graft_on_cutting: 'graft',
  double_graft_clonal: 'graft',
  bark_graft: 'graft',
  cleft_graft_topwork: 'graft',
  four_flap_graft: 'graft',
  approach_graft: 'graft',
  t_bud: 'bud',
  chip_bud: 'bud',
  patch_bud: 'bud',
  sucker: 'division',
  corm_macropropagation: 'division',
  tissue_culture: 'division',
}

export const markOfMethod = (method: MethodId): MethodMark => markByMethod[method]

const formByMark: Readonly<Record<MethodMark, TreeForm>> = {
  seed: 'seedling',
  cutting: 'cutting-grown',
  layer: 'layered',
  graft: 'worked',
  bud: 'worked',
  division: 'divided',
}

/** How a tree made so stands on its roots. */
export const formOfMethod = (method: MethodId): TreeForm => formByMark[markOfMethod(method)]
