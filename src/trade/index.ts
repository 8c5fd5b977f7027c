/** The door of the trade: words, figures, windows, protocols and kinds. The facts have their own, `facts/index.ts`. */
export { FactSaid, measureOf } from './facts/fact-key.ts'
export { Species } from './facts/species.ts'
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
export { formOfMethod, markOfMethod } from './mark-of-method.ts'
export { type EpithetFault, epithetFaults } from './names/epithet.ts'
export { type NameFault, type NameReading, parseName } from './names/parse-name.ts'
export { cultivarWriting, type PlantName, writeName } from './names/plant-name.ts'
export { foldName, sameName } from './names/same-name.ts'
export { listed, type Part, phrase } from './phrase.ts'
export { Phrase } from './phrase-shape.ts'
export { CaliperGrowth, Preparation, Protocol, Setting, Step, Taking, Work } from './protocol.ts'
export { copyProtocol } from './protocols/copy-protocol.ts'
export { capital, inEnglish, type Telling, told } from './told.ts'
export {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  gramsFromOunces,
  inchesFromMm,
  kilogramsFromPounds,
  litresFromCubicInches,
  litresFromImperialGallons,
  litresFromUsGallons,
  metresFromFeet,
  mmFromInches,
  percentFromPpm,
  poundsFromKilograms,
  ppmFromPercent,
  squareFeetFromSquareMetres,
  squareMetresFromSquareFeet,
} from './units.ts'
export {
  Material,
  MethodId,
  MethodMark,
  PlaceKind,
  Sign,
  Skill,
  TreeForm,
} from './vocabulary.ts'
export { type Hemisphere, isOpen, monthsAtLatitude, Window, weeksOpen, windowMonths } from './window.ts'
export { WindowKind, windowKind } from './window-kind.ts'
