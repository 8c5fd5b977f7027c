import type { Drafting } from '../model/drafting.ts'
import type {
  BoughtColumn,
  DeliveryColumn,
  ExtraAreaColumn,
  HoldColumn,
  LessColumn,
  Margins,
  OvertimeColumn,
  PlantedColumn,
  RootstockUseColumn,
  StartColumn,
  Wait,
  WholeStartColumns,
} from '../model/season-model.ts'
import type { Course, Season } from '../season.ts'
import type { Capacity } from './capacity.ts'

/** Weeks in which a kind is of use: from the first to the last in which an order or a graft may take it. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** The model while the rules write it: the season, the decisions so far, and the sheet to write on. */
export interface SeasonDraft {
  readonly season: Season
  readonly margins: Margins
  readonly model: Drafting
  readonly spans: readonly (Span | null)[]
  readonly starts: readonly StartColumn[]
  /** By kind: the starts that make it, the grafts that use it, the deliveries that take it. */
  readonly startsOf: readonly (readonly StartColumn[])[]
  readonly usesOf: readonly (readonly RootstockUseColumn[])[]
  readonly deliveriesOf: readonly (readonly DeliveryColumn[])[]
  readonly startColumn: Int32Array
  readonly rootstockUses: readonly RootstockUseColumn[]
  readonly deliveries: readonly DeliveryColumn[]
  readonly orderRow: Int32Array
  readonly shortColumn: Int32Array
  /** Whether starts are whole trays (rule 7) or may be any number (the relaxation). */
  readonly isWhole: boolean
  /** Most that a start by each way could be of use: a batch's own work is spread over so many in the relaxation. */
  readonly largestStart: Float64Array
  /** By kind, the weeks in which any of it can be taken. */
  readonly takesOf: readonly Int32Array[]
  /** Plants of a kind finished and kept from the end of one week in which any can be taken to the next. */
  readonly holds: HoldColumn[]
  readonly waits: Wait[]
  readonly capacities: Capacity[]
  readonly bought: BoughtColumn[]
  readonly planted: PlantedColumn[]
  readonly overtime: OvertimeColumn[]
  readonly extraArea: ExtraAreaColumn[]
  readonly lessThanAccepted: LessColumn[]
  readonly lessThanSet: number[]
  readonly wholeStarts: WholeStartColumns[]
}

/** A rule of the trade writes its rows, and the columns that only it needs, into the draft. */
export type SeasonRule = (draft: SeasonDraft) => void

export const courseOf = (season: Season, way: number, week: number): Course => {
  const { courses, courseOfWeek } = season.ways[way]!
  return courses[courseOfWeek[week]!]!
}

/** First and last week since the start in which plants become ready. */
export function readySpan(course: Course): Span {
  let from = 0
  while (from < course.ready.length - 1 && course.ready[from] === 0) from++
  return { from, to: course.ready.length - 1 }
}

/** Share of what is begun that is finished in the end. */
export const survivalOf = (course: Course): number => course.ready.reduce((sum, share) => sum + share, 0)
