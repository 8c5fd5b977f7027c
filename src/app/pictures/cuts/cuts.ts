import type { Drawing } from '../../../trade/guides/index.ts'
import { barkGraftCuts } from './drawings/bark-grafts.ts'
import { budCuts } from './drawings/buds.ts'
import { cleftCuts } from './drawings/clefts.ts'
import { cuttingCuts } from './drawings/cuttings.ts'
import { layerCuts } from './drawings/layers.ts'
import { divisionCuts, seedCuts } from './drawings/seed.ts'
import { whipCuts } from './drawings/whips.ts'
import type { Cut } from './stroke.ts'

/** Every drawing that a guide names. */
export const CUTS: Readonly<Record<Drawing, Cut>> = {
  ...seedCuts,
  ...cuttingCuts,
  ...layerCuts,
  ...cleftCuts,
  ...whipCuts,
  ...barkGraftCuts,
  ...budCuts,
  ...divisionCuts,
}
