import * as z from 'zod'
import { Figure, ShareFigure } from './figure.ts'
import { ProtocolId, SpeciesId, StepId } from './ids.ts'
import { Material, MethodId, PlaceKind, Sign, Skill } from './vocabulary.ts'
import { Window } from './window.ts'

/** Work on the plants of one step. `minutesPerPlant` counts those alive when it is done. */
export const Work = z
  .object({
    task: z.string().min(1),
    skill: Skill,
    /** `begin` and `end` of the step, or once in `each week` of it. */
    when: z.enum(['begin', 'end', 'each week']),
    minutesPerPlant: Figure,
    minutesPerBatch: z.number().min(0).default(0),
    /** One line of caution, shown beside the task. */
    caution: z.string().optional(),
  })
  .readonly()
export type Work = z.infer<typeof Work>

/** A stretch of a batch's life. `survival` is the share of those entering that leave it alive and fit to go on. */
export const Step = z
  .object({
    id: StepId,
    name: z.string().min(1),
    place: PlaceKind,
    days: Figure,
    survival: ShareFigure,
    /** What the share of survival counts, and what is looked at when counting. */
    sign: Sign,
    /** Plants to a square metre of bench; null where the step takes no bench (on the mother tree). */
    plantsPerSquareMetre: Figure.nullable(),
    work: z.array(Work).readonly(),
    /** Medium, pot, tie and such for each plant entering, in the nursery's unit of money. */
    materialCostPerPlant: z.number().min(0).default(0),
  })
  .readonly()
export type Step = z.infer<typeof Step>

/** Work that must be done before the start: shoots defoliated, stocks headed, seed stratified. */
export const Preparation = z
  .object({
    task: z.string().min(1),
    daysBefore: z.number().int().min(0),
    skill: Skill,
    minutesPerPlant: Figure,
    caution: z.string().optional(),
  })
  .readonly()
export type Preparation = z.infer<typeof Preparation>

/** What one started plant takes. Several parts for trees of three parts or more. */
export const Taking = z.discriminatedUnion('what', [
  z
    .object({
      what: z.literal('material'),
      material: Material,
      /** For worked trees: which part it becomes. Of a multi-worked tree each cultivar gives `perPlant`. */
      part: z.enum(['whole plant', 'scion', 'interstem', 'rootstock']),
      /** Sticks, cuttings, branches or seeds for one plant started (a stick of five buds: 0.2). */
      perPlant: z.number().positive(),
      /** How long it may be kept once cut or gathered. */
      keepsDays: Figure,
      /** The step at whose begin it is taken: the first, unless it is worked on later. */
      atStep: StepId.optional(),
    })
    .readonly(),
  z
    .object({
      what: z.literal('rootstock'),
      perPlant: z.literal(1),
      /** Stem diameter within which the cut can be made. */
      caliperMm: z.object({ min: z.number().positive(), max: z.number().positive() }).readonly(),
      /** The step at whose begin the rootstock is used: the first, unless the scion waits. */
      atStep: StepId.optional(),
    })
    .readonly(),
])
export type Taking = z.infer<typeof Taking>

/** How the stems of a rootstock batch thicken: mean and spread, so that the workable share follows. */
export const CaliperGrowth = z
  .object({
    /** Mean stem diameter when the last step ends. */
    meanMmWhenReady: z.number().positive(),
    mmPerWeek: z.number().min(0),
    /** Standard deviation between stems as a share of the mean. */
    spreadShare: z.number().min(0).max(1),
  })
  .readonly()
export type CaliperGrowth = z.infer<typeof CaliperGrowth>

/** A measure of the work that the bench card shows: width of the ring, strength of hormone, warmth of the bed. */
export const Setting = z.object({ name: z.string().min(1), unit: z.string(), figure: Figure }).readonly()
export type Setting = z.infer<typeof Setting>

/** The written way to make one kind of plant. */
export const Protocol = z
  .object({
    id: ProtocolId,
    name: z.string().min(1),
    version: z.number().int().min(1),
    method: MethodId,
    /** Null where it serves any fruit. */
    species: SpeciesId.nullable(),
    /** The protocol it was copied from, if any. */
    basedOn: ProtocolId.nullable(),
    window: Window,
    before: z.array(Preparation).readonly(),
    takes: z.array(Taking).readonly(),
    steps: z.array(Step).min(1).readonly(),
    /** Starts come in multiples of this many. */
    tray: z.number().int().min(1),
    smallestBatch: z.number().int().min(1),
    /** How long a finished plant stays fit to sell or to work after it is ready. */
    usableDays: z.number().int().min(1),
    caliper: CaliperGrowth.nullable(),
    cautions: z.array(z.string()).readonly(),
    settings: z.array(Setting).readonly().optional(),
    note: z.string().optional(),
  })
  .readonly()
  .refine(p => new Set(p.steps.map(step => step.id)).size === p.steps.length, 'each step needs its own id')
export type Protocol = z.infer<typeof Protocol>
