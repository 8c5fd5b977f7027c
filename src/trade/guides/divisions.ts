import { bananaSuckers } from '../facts/general/keeping-wood.ts'
import { fails, known, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

export const divisionGuides: readonly Guide[] = [
  {
    method: 'sucker',
    pictured: 'suckerDug',
    summary: 'A shoot with its own base parted from the mother: a whole plant in one stroke.',
    goodFor: 'Banana, fig, hazel, pomegranate: few, strong, early-bearing plants.',
    notFor: 'Worked trees (the sucker is the stock), and mats with wilt, bunchy top, weevil or nematodes.',
    needs: {
      tools: ['Sharp spade or bar', 'Knife', 'Bucket of disinfectant', 'Shade', 'Pots or planting holes'],
      wood: 'Sword sucker: narrow leaves, stout base, knee to waist high; from a clean, named mat.',
      stock: null,
      season: 'Beginning of the rains, or at rest for woody plants.',
    },
    steps: [
      step(
        'suckerDug',
        'Cut straight down between mother and sucker, then lift it with its whole base.',
        'Base not split; mother’s wound covered with soil.',
        'The base is store and bud at once: a broken one rots.',
      ),
      step(
        'suckerPared',
        'Trim roots and outer skin off the base down to clean white; shorten the top.',
        'White all over: brown tunnels or red streaks go to the fire, not to the bench.',
        'Weevil, nematodes and wilt travel in the skin: this cut is the quarantine.',
      ),
      step(
        'suckerPlanted',
        'Rest it in shade for a day or two, then plant base down, just covered, and firm.',
        'Upright; crown not buried; no hollow beneath.',
        'Cuts must dry before wet soil closes over them.',
      ),
      step(
        'suckerGrown',
        'Water with care until the first new leaf; then feed.',
        'A new leaf unrolled from the centre; resists a push.',
        'The old leaves tell nothing: only the new one shows live roots.',
      ),
    ],
    measures: [
      known('suckers keep in dry shade', 'days', bananaSuckers.days),
      usual('depth over the base', 'mm', 30, 50, 100),
    ],
    failures: [
      fails('Rots in the pot', 'planted wet from paring', 'buried too deep', 'sick mat'),
      fails('Stands still', 'water sucker with broad leaves taken', 'cold'),
      fails('Streaked or bunched leaves', 'virus: destroy, hold the whole mat, tell whom the law names'),
    ],
    aftercare: [
      weeks(0, 3, 'Half shade, barely moist.'),
      weeks(3, 8, 'First leaves: water and feed; look for virus signs each week.'),
      weeks(8, 16, 'Full light; sell by new leaves and stem.'),
    ],
    cautions: ['blade', 'tools', 'lifting', 'sap', 'hotWater'],
  },
  {
    method: 'corm_macropropagation',
    pictured: 'cormShoots',
    summary: 'A pared banana corm made to sprout from all its eyes in a warm humid bed.',
    goodFor: 'Dozens of clean plantlets from one good corm without a laboratory.',
    notFor: 'Corms of mats that were not checked: it multiplies disease as well.',
    needs: {
      tools: [
        'Knife',
        'Hot-water bath',
        'Steamed sawdust or coir in a bin',
        'Humid chamber',
        'Pots',
        'Labels',
      ],
      wood: 'Sword sucker or maiden corm, clean and white within.',
      stock: null,
      season: 'Warm weather; all year under cover in the tropics.',
    },
    steps: [
      step(
        'cormPared',
        'Pare roots and skin off; take the leaf bases away one by one, down to the eyes.',
        'An eye shows at each leaf base; flesh white.',
        'Covered eyes stay asleep.',
      ),
      step(
        'cormCrossed',
        'Take out the growing point and cut a cross into the top, through the heart.',
        'Cross deep enough to stop the centre, not to split the corm.',
        'While the centre lives it keeps every side eye quiet.',
      ),
      step(
        'cormBed',
        'Let dry a day; bury level in moist sawdust in the warm, covered bed.',
        'Moist, not wet: a handful gives no drop; warm to the thermometer.',
        'Warm and wet together without air is rot.',
      ),
      step(
        'cormShoots',
        'Take shoots off with their own roots when they have some leaves; cross-cut the stumps for a second crop.',
        'Three leaves or so, roots at the base; small knife, clean cut.',
        'Without roots it must be weaned like a cutting, and many die.',
      ),
    ],
    measures: [usual('drying after cutting', 'days', 1, 1, 2), usual('leaves when taken off', '', 2, 3, 4)],
    failures: [
      fails('Corm soft and smelling', 'too wet', 'not dried', 'dirty knife or bed'),
      fails('Few shoots', 'centre still alive', 'eyes pared off', 'too cool'),
      fails('Odd leaves', 'off-type or virus: throw out and trace the mat'),
    ],
    aftercare: [
      weeks(0, 4, 'Warm, dark, moist; leave shut.'),
      weeks(4, 10, 'Shoots: light shade; take them as they root.'),
      weeks(10, 16, 'Pot; humid for two weeks, then open; throw out off-types.'),
    ],
    cautions: ['blade', 'tools', 'hotWater', 'electricity', 'heat', 'lifting', 'medium'],
  },
  {
    method: 'tissue_culture',
    pictured: 'plugDome',
    summary: 'Plantlets bought in flask or tray, brought from sterile air to the nursery in steps.',
    goodFor: 'Clean, even stock of banana, blueberry, clonal stocks and walnut in any number and week.',
    notFor: 'A nursery without a humid, shaded, clean place on the very day they arrive.',
    needs: {
      tools: [
        'Bowl of lukewarm clean water',
        'Soft hands, tweezers',
        'Plug trays, fine steamed medium',
        'Dome or fog',
        'Labels with laboratory and lot',
      ],
      wood: 'Rooted plantlets of a named clone with the laboratory’s health and trueness papers.',
      stock: null,
      season: 'Any; book the bench before the date of delivery.',
    },
    steps: [
      step(
        'flaskOpened',
        'Open the flasks in the shade on the day they come; let them breathe closed first for a few days if they can wait.',
        'Clear jelly, white roots; cloudy or furry flasks go back unopened.',
        'One mouldy flask opened on the bench seeds the whole house.',
      ),
      step(
        'flaskRinsed',
        'Rinse all jelly off in lukewarm water.',
        'No jelly between the roots; roots not torn.',
        'Jelly is sugar: fungus eats it first and the stem next.',
      ),
      step(
        'plugDome',
        'Plug into fine moist medium, grade by size, close the dome, shade.',
        'Crown level with the surface; air wet, medium only moist.',
        'Leaves made in the flask have no wax: they lose all their water in an hour of dry air.',
      ),
      step(
        'plugWeaned',
        'Open the dome a little more each few days; then light; then feed.',
        'New leaves, thicker and darker than the old ones.',
        'Only leaves made here can stand here: wait for them.',
      ),
    ],
    measures: [
      usual('first days under the dome', 'days', 7, 12, 21),
      usual('first feed', '% of full strength', 10, 25, 50),
    ],
    failures: [
      fails('Wilt in the first days', 'dome opened', 'sun', 'roots torn'),
      fails('Grey rot at the crown', 'jelly left on', 'planted deep', 'no air after the first week'),
      fails('Odd plants among them', 'off-types: count and tell the laboratory, lot by lot'),
    ],
    aftercare: [
      weeks(0, 2, 'Dome shut, deep shade, fog; look for rot daily.'),
      weeks(2, 4, 'Air by steps; weak feed.'),
      weeks(4, 8, 'Dome off; lighter shade; throw out off-types.'),
      weeks(8, 14, 'Pot on; harden.'),
    ],
    cautions: ['medium', 'electricity', 'heat', 'tools'],
  },
]
