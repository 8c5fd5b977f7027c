import type { Drawing } from '../../../trade/guides/index.ts'
import { airLayerCuts } from './drawings/air-layers.ts'
import { approachCuts } from './drawings/approach-grafts.ts'
import { barkGraftCuts } from './drawings/bark-grafts.ts'
import { budCuts } from './drawings/buds.ts'
import { cleftCuts } from './drawings/clefts.ts'
import { divisionCuts } from './drawings/divisions.ts'
import { doubleGraftCuts } from './drawings/double-grafts.ts'
import { groundLayerCuts } from './drawings/ground-layers.ts'
import { hardwoodCuttingCuts } from './drawings/hardwood-cuttings.ts'
import { leafyCuttingCuts } from './drawings/leafy-cuttings.ts'
import { omegaCuts } from './drawings/omega-grafts.ts'
import { plantletCuts } from './drawings/plantlets.ts'
import { seedCuts } from './drawings/seed.ts'
import { pieceCuts } from './drawings/stem-and-root-pieces.ts'
import { veneerCuts } from './drawings/veneers.ts'
import { whipCuts } from './drawings/whips.ts'
import type { Cut } from './stroke.ts'

/** Every drawing that a guide names. */
export const CUTS: Readonly<Record<Drawing, Cut>> = {
  ...seedCuts,
  ...leafyCuttingCuts,
  ...hardwoodCuttingCuts,
  ...pieceCuts,
  ...airLayerCuts,
  ...groundLayerCuts,
  ...cleftCuts,
  ...whipCuts,
  ...omegaCuts,
  ...doubleGraftCuts,
  ...approachCuts,
  ...veneerCuts,
  ...barkGraftCuts,
  ...budCuts,
  ...divisionCuts,
  ...plantletCuts,
}
