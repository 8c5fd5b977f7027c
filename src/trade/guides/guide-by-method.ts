import * as z from 'zod'
import { MethodId } from '../vocabulary.ts'
import { barkGuides } from './bark-grafts.ts'
import { benchGuides } from './bench-grafts.ts'
import { budGuides } from './buds.ts'
import { cleftGuides } from './cleft-grafts.ts'
import { cuttingGuides } from './cuttings.ts'
import { divisionGuides } from './divisions.ts'
import { Guide } from './guide.ts'
import { layerGuides } from './layers.ts'
import { seedGuides } from './seed.ts'

let byMethod: ReadonlyMap<MethodId, Guide> | undefined
const read = (): ReadonlyMap<MethodId, Guide> => {
  if (byMethod === undefined) {
    const written = z
      .array(Guide)
      .parse([
        ...seedGuides,
        ...cuttingGuides,
        ...layerGuides,
        ...cleftGuides,
        ...barkGuides,
        ...benchGuides,
        ...budGuides,
        ...divisionGuides,
      ])
    const found = new Map(written.map(guide => [guide.method, guide]))
    byMethod = new Map(MethodId.options.map(method => [method, found.get(method)!]))
  }
  return byMethod
}

/** In the order of the vocabulary; every method has its guide. */
export const allGuides = (): readonly Guide[] => [...read().values()]

export const guideOf = (method: MethodId): Guide => read().get(method)!
