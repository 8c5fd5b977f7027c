import * as z from 'zod'
import { CultivarId, KindId, MethodId, PersonId, ProtocolId, SpeciesId, StepId } from '../trade/index.ts'

const members = <Member extends z.ZodType>(member: Member) =>
  z
    .object({
      member,
      name: z.string(),
      /** Share of the plants compared that would have come through, had all been like this one's. */
      share: z.number(),
      low: z.number(),
      high: z.number(),
      batches: z.number(),
      entered: z.number(),
      survived: z.number(),
      /** In the funnel: its share, not drawn towards the others, and how many single plants its counts are worth. */
      seen: z
        .object({
          share: z.number(),
          worth: z.number(),
          standing: z.enum(['far-below', 'below', 'within', 'above', 'far-above']),
        })
        .readonly(),
    })
    .readonly()

/** What may be said of the best against the last. */
const Finding = z
  .object({
    kind: z.enum(['cannot-tell-yet', 'no-difference-shown', 'probably-different', 'hardly-chance']),
    chanceFirstBetter: z.number(),
    plantsMore: z.number(),
  })
  .readonly()

const inMethod = <Member extends z.ZodType>(member: Member) =>
  z
    .object({
      method: MethodId,
      methodName: z.string(),
      /** Of all plants compared, what came through. */
      share: z.number(),
      members: z.array(members(member)),
      finding: Finding,
    })
    .readonly()

const inStep = <Member extends z.ZodType>(member: Member) =>
  z
    .object({
      protocol: ProtocolId,
      protocolName: z.string(),
      step: StepId,
      stepName: z.string(),
      share: z.number(),
      members: z.array(members(member)),
      finding: Finding,
    })
    .readonly()

const inFruit = z
  .object({
    species: SpeciesId,
    fruitName: z.string(),
    /** What is compared is what takes: the first step that ends with roots, a union or a shoot. */
    share: z.number(),
    members: z.array(members(MethodId)),
    finding: Finding,
  })
  .readonly()

const inWay = z
  .object({
    species: SpeciesId,
    fruitName: z.string(),
    method: MethodId,
    methodName: z.string(),
    share: z.number(),
    members: z.array(members(CultivarId)),
    finding: Finding,
  })
  .readonly()

/** Who and what is beside each other, all else allowed for that the model knows. Best first. */
export const RatesCompared = z
  .object({
    people: z.array(inMethod(PersonId)),
    rootstocks: z.array(inMethod(KindId)),
    months: z.array(inStep(z.number().int())),
    kinds: z.array(inStep(KindId)),
    methods: z.array(inFruit),
    cultivars: z.array(inWay),
  })
  .readonly()
export type RatesCompared = z.infer<typeof RatesCompared>
