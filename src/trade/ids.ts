import * as z from 'zod'

/**
 * Names by which the nursery's things refer to each other. A brand keeps a bench from being passed where a
 * mother tree is meant; only the schema mints one (`BatchId.parse('24-118')`).
 */
const idText = z
  .string()
  .trim()
  .min(1)
  .max(120)
  .regex(/^\P{Cc}+$/u, 'an id is one line of text')

export const SpeciesId = idText.brand<'SpeciesId'>()
export type SpeciesId = z.infer<typeof SpeciesId>
export const CultivarId = idText.brand<'CultivarId'>()
export type CultivarId = z.infer<typeof CultivarId>
export const ProtocolId = idText.brand<'ProtocolId'>()
export type ProtocolId = z.infer<typeof ProtocolId>
export const StepId = idText.brand<'StepId'>()
export type StepId = z.infer<typeof StepId>
export const KindId = idText.brand<'KindId'>()
export type KindId = z.infer<typeof KindId>
export const BenchId = idText.brand<'BenchId'>()
export type BenchId = z.infer<typeof BenchId>
export const PersonId = idText.brand<'PersonId'>()
export type PersonId = z.infer<typeof PersonId>
export const MotherId = idText.brand<'MotherId'>()
export type MotherId = z.infer<typeof MotherId>
export const BatchId = idText.brand<'BatchId'>()
export type BatchId = z.infer<typeof BatchId>
export const OrderId = idText.brand<'OrderId'>()
export type OrderId = z.infer<typeof OrderId>
export const MaterialLotId = idText.brand<'MaterialLotId'>()
export type MaterialLotId = z.infer<typeof MaterialLotId>
export const EntryId = z.uuid().brand<'EntryId'>()
export type EntryId = z.infer<typeof EntryId>
