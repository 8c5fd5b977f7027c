/** The door of the trade: words, figures, windows, protocols and kinds. The facts have their own, `facts/index.ts`. */
export { Basis, commonPractice, Figure, ShareFigure } from './figure.ts'
export {
  BatchId,
  BenchId,
  CultivarId,
  EntryId,
  KindId,
  MaterialLotId,
  MotherId,
  OrderId,
  PersonId,
  ProtocolId,
  SpeciesId,
  StepId,
} from './ids.ts'
export { BuyIn, Cultivar, Kind, Licence, Way, wayName } from './kind.ts'
export { CaliperGrowth, Preparation, Protocol, Setting, Step, Taking, Work } from './protocol.ts'
export { copyProtocol } from './protocols/copy-protocol.ts'
export {
  Material,
  MethodId,
  MethodMark,
  markOfMethod,
  PlaceKind,
  Sign,
  Skill,
  TreeForm,
} from './vocabulary.ts'
export { type Hemisphere, Window, windowMonths } from './window.ts'
