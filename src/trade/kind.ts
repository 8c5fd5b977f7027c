import * as z from 'zod'
import { CultivarId, KindId, ProtocolId, SpeciesId } from './ids.ts'
import { TreeForm } from './vocabulary.ts'

/** One way to make a kind: a protocol, and for a worked tree the rootstock kinds that it may be worked on. */
export const Way = z
  .object({ protocol: ProtocolId, rootstocks: z.array(KindId).readonly().default([]) })
  .readonly()
export type Way = z.infer<typeof Way>

/** Bought in ready-made, at a price, after so many weeks of notice. */
export const BuyIn = z
  .object({ price: z.number().min(0), weeksNotice: z.number().int().min(0), mostPerWeek: z.number().min(0) })
  .readonly()
export type BuyIn = z.infer<typeof BuyIn>

/** A kind of tree (or of rootstock): cultivar, form and size. What an order names and a plan makes. */
export const Kind = z
  .object({
    id: KindId,
    name: z.string().min(1),
    species: SpeciesId,
    /** One for most; several for a multi-worked tree; none for a seedling of no named cultivar. */
    cultivars: z.array(CultivarId).readonly(),
    form: TreeForm,
    /** Of a worked tree, what it stands on (the first of those its ways accept); else null. */
    rootstock: KindId.nullable().default(null),
    interstem: CultivarId.nullable().default(null),
    /** As the trade sells it: "3 l pot", "bare root 12 to 14 mm". */
    size: z.string(),
    price: z.number().min(0),
    /** Cost to keep one finished plant another week. */
    holdingCostPerWeek: z.number().min(0),
    buyIn: BuyIn.nullable().default(null),
    ways: z.array(Way).readonly(),
  })
  .readonly()
export type Kind = z.infer<typeof Kind>

/** The name of a way in plans and rates: its kind and its protocol. */
export const wayName = (kind: KindId, protocol: ProtocolId): string => `${kind} by ${protocol}`

/** Leave to propagate a protected cultivar, as its owner granted it. */
export const Licence = z
  .object({
    owner: z.string(),
    treesPerYear: z.number().int().min(0).nullable(),
    until: z.iso.date().nullable(),
    feePerTree: z.number().min(0).default(0),
  })
  .readonly()
export type Licence = z.infer<typeof Licence>

export const Cultivar = z
  .object({
    id: CultivarId,
    /** The epithet without quotes, in the letters of its own language. */
    name: z.string().min(1),
    species: SpeciesId,
    synonyms: z.array(z.string()).readonly().default([]),
    licence: Licence.nullable().default(null),
    /** Sex, self-fertility, partners: what a buyer must know. */
    pollination: z.string().default(''),
  })
  .readonly()
export type Cultivar = z.infer<typeof Cultivar>
