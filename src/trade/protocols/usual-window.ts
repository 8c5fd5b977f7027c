import { losesLeaves, type Species } from '../facts/species.ts'
import type { MethodId } from '../vocabulary.ts'
import type { Window } from '../window.ts'

const allYear = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]

/** Condition, months for a deciduous fruit, months for an evergreen one (at a northern site). */
const usual: Readonly<Record<MethodId, readonly [string, readonly number[], readonly number[]]>> = {
  seed: ['Seed fresh, or its chilling done; medium warm', [3, 4, 5], [3, 4, 5, 6, 7, 8]],
  softwood_cutting: ['New shoots snap when bent', [5, 6, 7], [4, 5, 6, 7]],
  semi_hardwood_cutting: [
    'Flush finished, shoot firm at the base, tip still soft',
    [7, 8, 9],
    [6, 7, 8, 9, 10],
  ],
  hardwood_cutting: ['Wood of last season, ripe and at rest', [11, 12, 1, 2], [11, 12, 1, 2]],
  cladode_cutting: ['Stem mature, weather warm and dry', [4, 5, 6, 7, 8], [4, 5, 6, 7, 8]],
  root_cutting: ['Plant at rest, roots full', [12, 1, 2], [1, 2, 3]],
  air_layer: ['Bark slips; branch of a finished flush, in warm growing weather', [5, 6, 7], [4, 5, 6, 7, 8]],
  mound_layer: ['Shoots of the cut stool a hand high', [4, 5, 6], [4, 5, 6]],
  simple_layer: ['Shoot supple enough to peg down', [3, 4], [3, 4, 5]],
  top_wedge_graft: [
    'Stock active, scion wood firm with swelling buds not yet pushed',
    [3, 4, 5],
    [3, 4, 5, 8, 9],
  ],
  epicotyl_graft: ['Stock two to four weeks old, stem still reddish and soft', [5, 6, 7], [6, 7, 8]],
  veneer_graft: ['Bark slips; scion a hardened tip with swelling bud', [4, 5, 6], [4, 5, 6, 7, 8, 9]],
  whip_tongue_graft: ['Scion at rest; stock at rest or just waking', [1, 2, 3], [2, 3, 4]],
  bench_graft_hot_callus: ['Scion and stock at rest', [1, 2, 3], [2, 3]],
  bench_graft_on_cutting: ['Cutting leafy and firm at the base; scion buds ripe', [6, 7, 8], [5, 6, 7, 8, 9]],
  double_graft_clonal: ['Nurse seed fresh', [9, 10, 11], [9, 10, 11, 12]],
  bark_graft: ['Bark slips; scion at rest or its buds not yet pushed', [4, 5], [4, 5, 9]],
  cleft_graft_topwork: ['Scion at rest, stock just waking', [2, 3, 4], [3, 4]],
  four_flap_graft: ['Bark slips, scion at rest', [4, 5], [4, 5]],
  approach_graft: ['Both plants in active growth', [5, 6, 7], [5, 6, 7, 8]],
  t_bud: ['Bark slips; buds of this season ripe', [7, 8], [4, 5, 6, 7, 8, 9]],
  chip_bud: ['Buds ripe; bark need not slip', [8, 9], [3, 4, 5, 8, 9, 10]],
  patch_bud: ['Bark slips on stock and budstick', [5, 6, 7, 8], [4, 5, 6, 7, 8, 9]],
  sucker: ['Sucker rooted; plant at rest, or rains begun', [11, 12, 1, 2], [3, 4, 5, 6]],
  corm_macropropagation: ['Corm clean, weather warm', allYear, allYear],
  tissue_culture: ['Plantlets rooted in the flask; humid place ready', allYear, allYear],
}

/** Six months on: holds for temperate and subtropical fruits only. */
export const sixMonthsOn = (months: readonly number[]): number[] =>
  months.map(month => ((month + 5) % 12) + 1).sort((a, b) => a - b)

/** When a method is commonly begun, for a fruit of which the facts name no window. */
export function usualWindow(method: MethodId, species: Species): Window {
  const [condition, deciduous, evergreen] = usual[method]
  const northMonths = losesLeaves(species) ? deciduous : evergreen
  return {
    condition,
    northMonths,
    southMonths: sixMonthsOn(northMonths),
    basis: 'common practice',
    sources: [],
    note: 'no window known for this fruit and method',
  }
}
