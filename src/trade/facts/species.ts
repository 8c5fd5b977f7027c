import * as z from 'zod'
import { Figure, ShareFigure } from '../figure.ts'
import { SpeciesId } from '../ids.ts'
import { MethodId } from '../vocabulary.ts'
import { Window } from '../window.ts'
import { Quantities } from './method.ts'
import { TextFact } from './text-fact.ts'
import { type TimingKey, timingByKey } from './timing.ts'

export const Importance = z.enum(['main', 'common', 'minor', 'experimental'])
export type Importance = z.infer<typeof Importance>

const Timing = z.enum(Object.keys(timingByKey) as [TimingKey, ...TimingKey[]])

/** One method as it is done with one fruit. */
export const SpeciesWay = z
  .object({
    method: MethodId,
    importance: Importance,
    role: z.string(),
    /** True, or in a word where it depends. */
    trueToType: z.union([z.boolean(), z.string()]),
    success: ShareFigure,
    /** What the share of success counts: germination, rooting, take, survival. */
    counts: z.string().min(1),
    /** Single published results. They disagree, and that is information. */
    measured: z
      .array(
        z.object({ share: z.number().min(0).max(1), source: z.string(), condition: z.string() }).readonly(),
      )
      .readonly()
      .default([]),
    /** Months to saleable run from the act of the method: sowing, sticking, ringing, budding, grafting. */
    timing: z.partialRecord(Timing, Figure).readonly().default({}),
    window: Window.nullable().default(null),
    materials: Quantities,
    environment: Quantities,
    mist: TextFact.optional(),
    notes: z.array(TextFact).readonly().default([]),
  })
  .readonly()
export type SpeciesWay = z.infer<typeof SpeciesWay>

export const Hazard = TextFact.unwrap()
  .extend({
    kind: z.enum([
      'health',
      'movement',
      'ip',
      'disease',
      'practice',
      'structure',
      'pest',
      'supply',
      'nutrition',
      'buyer',
    ]),
  })
  .readonly()
export type Hazard = z.infer<typeof Hazard>

/** A fruit: how its seed behaves, what it is worked on, how it grows in the orchard, and the ways to make it. */
export const Species = z
  .object({
    id: SpeciesId,
    /** Of a fruit that a nursery adds: a built-in one that it is like, for what is known by fruit and has no figure. */
    like: SpeciesId.optional(),
    commonName: z.string().min(1),
    botanical: z.string().min(1),
    /** The botanical names meant, each whole, the usual one first. */
    taxa: z.array(z.string()).min(1).readonly(),
    family: z.string(),
    climates: z.array(z.enum(['tropical', 'subtropical', 'temperate'])).readonly(),
    evergreen: z.union([z.boolean(), z.literal('semi')]),
    reproduction: z
      .object({
        seedTrueToType: z.string(),
        embryony: z.enum(['mono', 'poly', 'mixed', 'none']),
        account: TextFact,
        dioecious: z.union([z.boolean(), z.string()]),
        pollination: TextFact,
        embryosPerSeed: Figure.optional(),
        femalesPerMale: Figure.optional(),
      })
      .readonly(),
    seed: z
      .object({
        storageClass: TextFact,
        viabilityDays: Figure,
        daysToGerminate: Figure,
        germination: ShareFigure,
        coldStratificationDays: Figure.nullable().default(null),
        pretreatment: TextFact,
        seedsPerFruit: Figure.optional(),
        seedsPerKilogram: Figure.optional(),
      })
      .readonly()
      .nullable()
      .default(null),
    rootstocks: z
      .object({
        usual: TextFact,
        compatibility: TextFact,
        monthsSowToWorkable: Figure.nullable().default(null),
        stemDiameterMm: Figure.nullable().default(null),
      })
      .readonly(),
    orchard: z
      .object({
        yearsToFruitSeedling: Figure.nullable().default(null),
        yearsToFruitClonal: Figure,
        rowSpacingMetres: Figure,
        inRowSpacingMetres: Figure,
        minYoungCelsius: Figure,
        minMatureCelsius: Figure,
        chillHours: Figure.nullable().default(null),
        /** Mean of the warmest month that ripens it; the rest where a fruit's own figure is better than its group's. */
        warmestMonthCelsius: Figure.optional(),
        heightMetres: Figure.optional(),
        fullCropKgPerSquareMetre: Figure.optional(),
        yearsFirstToFull: Figure.optional(),
        trueFromSeedShare: ShareFigure.optional(),
        worthKeepingShare: ShareFigure.optional(),
        cropAloneShare: ShareFigure.optional(),
        fruitWorthPerKg: Figure.optional(),
      })
      .readonly(),
    hazards: z.array(Hazard).readonly().default([]),
    ways: z.array(SpeciesWay).readonly(),
  })
  .readonly()
export type Species = z.infer<typeof Species>

/** The built-in fruit by which a fruit is looked up where a table of the program names fruits. */
export const knownAs = ({ id, like }: Pick<Species, 'id' | 'like'>): SpeciesId => like ?? id
/** At rest without leaves in winter; a half-evergreen fruit is so where winters are cold. */
export const losesLeaves = (of: Pick<Species, 'evergreen' | 'climates'>): boolean =>
  of.evergreen === false || (of.evergreen === 'semi' && of.climates.includes('temperate'))
/** How this fruit is made by this method, or undefined where the facts do not know it. */
export const wayOf = (of: Species, method: MethodId): SpeciesWay | undefined =>
  of.ways.find(way => way.method === method)
