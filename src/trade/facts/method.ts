import * as z from 'zod'
import { Figure } from '../figure.ts'
import { MethodId } from '../vocabulary.ts'
import methods from './methods.json' with { type: 'json' }
import { type QuantityKey, quantityByKey } from './quantity.ts'

const Quantity = z.enum(Object.keys(quantityByKey) as [QuantityKey, ...QuantityKey[]])
/** Figures by what they measure; `quantityByKey` gives name and unit. */
export const Quantities = z.partialRecord(Quantity, Figure).readonly().default({})
export type Quantities = z.infer<typeof Quantities>

/** What holds for a method whatever the fruit; a fruit's own figure goes before it. */
export const Method = z
  .object({
    method: MethodId,
    label: z.string().min(1),
    clonal: z.boolean(),
    stages: z.array(z.string()).readonly(),
    needsBarkSlipping: z.boolean(),
    /** Plants (limbs, for top-working) that one person does in an hour. */
    perPersonHour: Figure,
    materials: Quantities,
    environment: Quantities,
    daysOnBench: Figure.nullable().default(null),
  })
  .readonly()
export type Method = z.infer<typeof Method>

let byId: ReadonlyMap<MethodId, Method> | undefined

const read = (): ReadonlyMap<MethodId, Method> => {
  byId ??= new Map(
    z
      .array(Method)
      .parse(methods)
      .map(method => [method.method, method]),
  )
  return byId
}

export const allMethods = (): readonly Method[] => [...read().values()]
/** Every id of the vocabulary has its facts. */
export const methodById = (id: MethodId): Method => read().get(id)!
