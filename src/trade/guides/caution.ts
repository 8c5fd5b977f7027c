import * as z from 'zod'
import { caution } from '../protocols/cautions.ts'

/** The cautions of the protocols, and those that only the hands meet. */
export const guideCautions = {
  ...caution,
  kernel:
    'Kernels of apricot, peach, plum, cherry and loquat, and seed of annona and white sapote, are poisonous: never taste, keep from children and animals, no dust.',
  hotWax:
    'Hot wax burns and can catch fire: water bath, lid at hand, never left alone, dip with the arm clear.',
  saw: 'A sawn limb falls: cut from below first, nobody underneath, eyes covered.',
  spikes: 'Spines and thorns: thick gloves, eyes covered.',
  medium: 'Wet the medium before handling: no dust to breathe; wash hands, cover cuts.',
  hotWater: 'Hot-water treatment scalds: lift baskets with a hook, let them drip before reaching in.',
} as const

export const GuideCaution = z.enum(
  Object.keys(guideCautions) as [keyof typeof guideCautions, ...(keyof typeof guideCautions)[]],
)
export type GuideCaution = z.infer<typeof GuideCaution>
