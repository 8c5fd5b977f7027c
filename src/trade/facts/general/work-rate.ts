import { commonPractice, type Figure } from '../../figure.ts'
import { published } from './published.ts'

/** Plants that one practised person does in an hour. Nurseries differ five-fold (ADEGBOLA2018): learn your own. */
export const plantsPerPersonHour = {
  softCuttingsStuck: published(282, 700, 1360, ['FISHER_STICK'], {
    typicalBasis: 'interpolated',
    note: 'soft young-plant lines, workers and supervisors',
  }),
  woodyCuttingsStuck: commonPractice(120, 250, 500, 'collect, strip, dip, stick'),
  tBuds: commonPractice(80, 150, 250, 'each of a budder-and-tier pair'),
  citrusTBudsAlone: published(39, 43, 45, ['OLANIYAN_CITRUS'], {
    note: 'timed at 1.33 to 1.54 minutes a bud, one person alone',
  }),
  chipBuds: commonPractice(60, 120, 200),
  whipAndTongue: commonPractice(40, 80, 140),
  omegaGrafts: commonPractice(100, 220, 400),
  wedgesInPots: commonPractice(25, 45, 80, 'with tie and bag'),
  veneersInPots: commonPractice(20, 35, 55),
  patchBuds: commonPractice(30, 55, 90),
  approachGrafts: commonPractice(8, 12, 20),
  airLayersPutOn: commonPractice(8, 15, 25, 'from a ladder: half'),
  airLayersCutAndPotted: commonPractice(15, 25, 40),
  layersLiftedAndGraded: commonPractice(100, 250, 450),
  largeSeedSown: commonPractice(150, 300, 600),
  prickedOut: commonPractice(120, 250, 450),
  pottedSmall: commonPractice(80, 140, 250, '0.5 to 1.5 l by hand'),
  pottedLarge: commonPractice(40, 70, 120, '3 to 5 l by hand'),
  pottedByMachine: commonPractice(150, 250, 450, 'a person on a machine line'),
  unwrappedAndChecked: commonPractice(200, 400, 700),
  headedBackAndRubbed: commonPractice(120, 250, 450),
  stakedAndTied: commonPractice(50, 90, 160),
  spacedAndMoved: commonPractice(150, 350, 700, 'with a trolley'),
} as const

/**
 * Minutes a plant from plants an hour: 60 / rate, so the quick rate gives the low figure.
 * @example minutesPerPlant(plantsPerPersonHour.wedgesInPots).typical // 1.33
 */
export const minutesPerPlant = (perHour: Figure): Figure => ({
  ...perHour,
  low: 60 / perHour.high,
  typical: 60 / perHour.typical,
  high: 60 / perHour.low,
})

/** Of the typical speed and the typical take, in a first season. */
export const beginner = {
  speed: commonPractice(0.3, 0.4, 0.5),
  take: commonPractice(0.6, 0.7, 0.8),
} as const

export const productiveHoursPerDay = commonPractice(5, 5.5, 6)
