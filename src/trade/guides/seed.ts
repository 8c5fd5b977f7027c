import { fails, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

export const seedGuides: readonly Guide[] = [
  {
    method: 'seed',
    pictured: 'seedUp',
    summary:
      'Rootstocks and the fruits that come true: one straight root, one straight stem, all of one size.',
    goodFor: 'Rootstocks by the thousand; fruits that come true or nearly so; new seedlings to choose from.',
    notFor: 'A named cultivar that does not come true from seed: it must be worked or rooted.',
    needs: {
      tools: ['Bucket of water', 'Deep cells or tubes', 'Clean open medium', 'Labels', 'Caliper'],
      wood: 'Seed of ripe fruit from a known, healthy mother, flesh washed off the same day. Tropical large seed dies if it dries; temperate stones need their chilling first.',
      stock: null,
      season: 'Tropical seed as it ripens; chilled stones as the medium warms.',
    },
    steps: [
      step(
        'seedFloat',
        'Wash the flesh off and drop the seed into water; keep what sinks.',
        'Floating, light, holed or soft seed is thrown out.',
        'A seed that floats is hollow or dried: it takes a cell and gives no stem.',
      ),
      step(
        'seedSown',
        'Sow on its side, covered by about its own thickness.',
        'Level cover in every cell; a mango stone with its convex edge up, an avocado with its broad end down.',
        'On its side the root goes down and the shoot up without a loop, whichever end was which.',
      ),
      step(
        'seedUp',
        'Keep warm and evenly moist until root and shoot are out.',
        'Root down and white at the tip, shoot upright; lift only by the seed leaves.',
        'Wet cold medium rots the seed; a dry day kills the root tip, and the tree forks below ground.',
      ),
      step(
        'seedPricked',
        'Prick out into deep tubes while the root is still short.',
        'Root hangs straight in its hole; a hooked or looped root is thrown out.',
        'A root bent now stays bent: the tree blows over or strangles itself years later.',
      ),
      step(
        'seedlingWorkable',
        'Grow to a stem that can be worked, one stem, side shoots off the lower part.',
        'Gauge at working height. Grade by stem, not by height.',
        'Scion and stock must be near one thickness for the cambium to meet on both sides.',
      ),
    ],
    measures: [
      usual('depth of cover', 'times the seed', 0.5, 1, 2, 'thickness of the seed as it lies'),
      usual('stem for working, small grafts', 'mm', 5, 8, 12),
    ],
    failures: [
      fails(
        'Nothing comes up',
        'seed dried or old',
        'chilling not done or broken off',
        'medium too cold',
        'sown too deep',
      ),
      fails(
        'Seedlings fall over at the soil line',
        'damping off: too wet, too close, no air',
        'old medium or dirty trays',
      ),
      fails(
        'Many shoots from one seed, of unequal size',
        'several embryos: keep the strong even ones, throw out the odd one',
        'off-types left in the bed',
      ),
      fails('Stems thin and tall', 'too close, too dark', 'pricked out late'),
    ],
    aftercare: [
      weeks(0, 3, 'Warm, moist, covered from mice and rain. Look daily; take out mould.'),
      weeks(3, 6, 'Prick out; shade for a week, then more light.'),
      weeks(6, 16, 'Feed lightly; throw out off-types, forks and the slowest.'),
      weeks(16, 40, 'Space so that leaves do not touch; clean stem to working height; gauge each month.'),
    ],
    cautions: ['kernel', 'medium', 'tools'],
  },
]
