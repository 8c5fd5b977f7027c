import { commonPractice } from '../../figure.ts'
import { fromMemory, published } from './published.ts'

/** Share of the plants entering a stage that leave it alive, for any fruit: a weak belief that records replace. */
export const stageSurvival = {
  germinated: fromMemory(0.5, 0.75, 0.92),
  prickedOutAliveAfter30Days: commonPractice(0.88, 0.95, 0.98),
  reachesWorkableSizeInItsWindow: commonPractice(0.65, 0.82, 0.93),
  /** Share removed. */
  roguedAsOffType: commonPractice(0.05, 0.12, 0.3),
  taken: fromMemory(0.4, 0.78, 0.95),
  aliveFromTakeToHardened: commonPractice(
    0.8,
    0.92,
    0.97,
    'published points: sapodilla 65 at 30 days to 58 at 90 (TANUJA2016), mango 97 take to 91 survival (KHUSHI2019), guava 84 to 80 (BANYAL2022)',
  ),
  rooted: fromMemory(0.3, 0.65, 0.92),
  weanedAndPottedAlive: commonPractice(0.8, 0.9, 0.96),
  airLayerRooted: published(0.6, 0.8, 0.95, ['MENZEL2002'], {
    rangeBasis: 'from memory',
    note: 'lychee, "at least 80"',
  }),
  severedLayerAliveAfter90Days: published(0.45, 0.78, 0.92, ['LITCHI_LESSON2019', 'RAHMAN2002'], {
    typicalBasis: 'interpolated',
    note: 'lychee: 40 to 50 in one source, 78 to 90 in the other; easier fruits do better',
  }),
  moundLayerFieldReady: published(0.28, 0.44, 0.75, ['BEYHAN2020', 'ERDOGAN2005'], { note: 'hazelnut' }),
  grownToSaleable: commonPractice(0.8, 0.9, 0.96),
  /** General loss is given as 1, 3 and 6 per cent lost. */
  heldAndDispatched: commonPractice(0.94, 0.97, 0.99),
  /** A stage whose loss the figure before it already holds. */
  alreadyCounted: commonPractice(0.96, 0.99, 1, 'most of this loss is in the share of the step before'),
} as const
