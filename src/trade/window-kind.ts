import * as z from 'zod'
import type { MethodId } from './vocabulary.ts'

/** What a window waits for first: seed, wood that is ripe or at rest, bark that slips, or warmth in which plants grow. */
export const WindowKind = z.enum(['seed', 'wood', 'bark', 'heat'])
export type WindowKind = z.infer<typeof WindowKind>

/** Common practice, no source: after the condition under which each method is begun; checked against those of the facts. */
const byMethod: Readonly<Record<MethodId, WindowKind>> = {
  seed: 'seed',
  softwood_cutting: 'wood',
  semi_hardwood_cutting: 'wood',
  hardwood_cutting: 'wood',
  cladode_cutting: 'heat',
  root_cutting: 'wood',
  air_layer: 'bark',
  mound_layer: 'wood',
  simple_layer: 'wood',
  top_wedge_graft: 'wood',
  epicotyl_graft: 'seed',
  veneer_graft: 'bark',
  whip_tongue_graft: 'wood',
  bench_graft_hot_callus: 'wood',
  bench_graft_on_cutting: 'wood',
  double_graft_clonal: 'seed',
  bark_graft: 'bark',
  cleft_graft_topwork: 'wood',
  four_flap_graft: 'bark',
  approach_graft: 'heat',
  t_bud: 'bark',
  chip_bud: 'wood',
  patch_bud: 'bark',
  sucker: 'wood',
  corm_macropropagation: 'heat',
  tissue_culture: 'heat',
}

export const windowKind = (method: MethodId): WindowKind => byMethod[method]
