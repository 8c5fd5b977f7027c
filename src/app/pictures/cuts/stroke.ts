import type { Point } from './path.ts'

/** What a stroke stands for; `cuts.css` gives each its line and its filling. */
export type Role =
  | 'bark'
  | 'wood'
  | 'heartwood'
  | 'edge'
  | 'fine'
  | 'cambium'
  | 'leaf'
  | 'bud'
  | 'root'
  | 'tie'
  | 'medium'
  | 'grain'
  | 'film'
  | 'water'
  | 'spray'
  | 'wax'
  | 'tool'
  | 'seed'
  | 'callus'
  | 'dark'
  | 'heat'
  | 'measure'
  | 'gone'
  | 'knife'
  | 'knife-head'
  | 'move'
  | 'move-head'
  | 'wrong'

export interface Stroke {
  readonly role: Role
  readonly d: string
}

/** One drawing on the field. What the trade's rules say of it is told as data, so that it can be checked. */
export interface Cut {
  readonly strokes: readonly Stroke[]
  /** Of a piece of wood: where its base and its tip lie. Up is up: the base lies lower. */
  readonly polarity?: { readonly base: Point; readonly tip: Point }
  /** Of a join: where the cambium of one part lies on that of the other. */
  readonly meets?: readonly Point[]
}

/** The field of every drawing, square: `0 0 200 200`. */
export const FIELD = 200
