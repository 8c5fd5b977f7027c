/** The third door of the trade: how each method is done with the hands, step by step. Apart because its words are many. */
export { citation, sourceById } from '../facts/source.ts'
export { GuideCaution, guideCautions } from './caution.ts'
export { Drawing } from './drawing.ts'
export { Guide, GuideStep } from './guide.ts'
export { allGuides, guideOf } from './guide-by-method.ts'
export { benchFigures, guideFigures, guideName } from './guide-figures.ts'
