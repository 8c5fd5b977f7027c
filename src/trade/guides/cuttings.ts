import { ibaPpm } from '../facts/general/hormone-strength.ts'
import { fails, hormone, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

const leafyFailures = [
  fails(
    'Leaves drop in the first week',
    'cut in the heat of the day or left dry',
    'mist too rare or a blocked nozzle',
    'too much sun',
  ),
  fails(
    'Base black and soft',
    'medium holds too much water',
    'hormone too strong',
    'dirty blade, bench or medium',
  ),
  fails('Callus but no roots', 'wood too old or too soft', 'base too cold', 'mist kept on too long'),
  fails(
    'Roots, then collapse after potting',
    'weaned too fast',
    'roots broken in potting',
    'potted before the roots branched',
  ),
]
const leafyCare = [
  weeks(0, 1, 'Mist so that leaves never dry; shade; take out fallen leaves daily.'),
  weeks(
    1,
    4,
    'Mist less often as leaves hold up. Warm base, cooler top. Tug one in each tray: does it hold?',
  ),
  weeks(4, 7, 'Roots branched: halve the mist, then stop it; air in the day, closed at night.'),
  weeks(7, 10, 'Pot, shade for a week, then feed and give light step by step.'),
]

export const cuttingGuides: readonly Guide[] = [
  {
    method: 'softwood_cutting',
    pictured: 'softMade',
    summary: 'Soft growing tips, rooted fast under mist over a warm base.',
    goodFor:
      'Easy rooters in quantity from young stock plants: blueberry, guava, kiwifruit, some stone-fruit stocks.',
    notFor:
      'Fruits that hardly root from soft wood, and places without mist or fog that can be trusted every hour.',
    needs: {
      tools: [
        'Sharp clean knife or secateurs',
        'Cool box and wet cloth',
        'Hormone in a small dish',
        'Trays of open medium',
        'Mist or fog, warm bench',
      ],
      wood: 'This flush, snaps clean when bent, no flower buds, cut early in the day from well watered mothers.',
      stock: null,
      season: 'While shoots grow: late spring and early summer.',
    },
    steps: [
      step(
        'softTaken',
        'Cut shoots early in the day into a cool, wet box.',
        'Bend a tip: it must snap. If it folds it is too soft; if it splinters, too old.',
        'Soft wood holds the most rooting power and the least water.',
      ),
      step(
        'softMade',
        'Cut square just below a node; strip the lower leaves, halve the large ones.',
        'Tip up, base down, same length all through the tray.',
        'Roots come most readily at a node; halved leaves feed the cutting and lose less water.',
      ),
      step(
        'dipped',
        'Dip only the very base, a few seconds; let it dry off.',
        'Pour out what you need; never dip into the stock bottle.',
        'Too deep or too strong burns the stem above the place where roots should come.',
      ),
      step(
        'mistBed',
        'Dibble a hole, stick, firm with water, straight under the mist.',
        'Warm at the base, cool at the top; every nozzle wets its whole circle.',
        'Roots want warmth before leaves want growth; one dry hour is enough to lose the tray.',
      ),
      step(
        'cuttingRooted',
        'When roots branch, bring the cover or the mist off by steps.',
        'White roots on several sides, a new leaf moving.',
        'Roots made in mist are brittle and leaves are thin: both need a week or two to harden.',
      ),
    ],
    measures: [hormone('quick dip', ibaPpm.softwoodQuickDip), usual('depth in the dip', 'mm', 5, 10, 15)],
    failures: leafyFailures,
    aftercare: leafyCare,
    cautions: ['blade', 'tools', 'hormone', 'electricity', 'heat', 'medium'],
  },
  {
    method: 'semi_hardwood_cutting',
    pictured: 'semiWounded',
    summary: 'Firm shoots of a finished flush, wounded at the base, rooted under mist with bottom heat.',
    goodFor: 'Evergreens: olive, feijoa, guava, lime and lemon, coffee, cacao; kiwifruit in summer.',
    notFor:
      'Avocado, mango and others that seldom root so; trees whose own roots are weak or sick in your soil.',
    needs: {
      tools: [
        'Knife and secateurs',
        'Hormone in a small dish',
        'Trays of open medium',
        'Mist or fog, warm bench',
      ],
      wood: 'Flush finished, base firm and turning brown, tip not yet; leaves grown out; no fruit or flower.',
      stock: null,
      season: 'Summer to early autumn, when the flush has stopped.',
    },
    steps: [
      step(
        'semiTaken',
        'Cut firm shoots just below a node and take the soft tip off.',
        'The base resists the thumbnail; the leaves are full grown.',
        'Firm wood lasts the longer time to root; the soft tip would wilt and rot.',
      ),
      step(
        'semiWounded',
        'Strip the lower leaves; slice a thin sliver of bark off one side of the base.',
        'The green line of the cambium shows on both edges of the wound; wood only just bared.',
        'Roots come from along the cambium edge, and water and hormone get in there.',
      ),
      step(
        'dipped',
        'Dip the wounded base, a few seconds; let it dry off.',
        'Only base and wound are wet.',
        'Hormone on buds and leaves holds them back.',
      ),
      step(
        'mistBed',
        'Stick upright with half the stem in, firm, mist at once.',
        'Leaves touch but do not cover each other; the base is warm to the thermometer, not to the hand.',
        'Shaded leaves drop; a cold base makes callus and no roots.',
      ),
      step(
        'cuttingRooted',
        'Wean by steps once roots branch, then pot.',
        'A cutting that resists the tug on three sides of the tray.',
        'One root is not a root system: early potting breaks it.',
      ),
    ],
    measures: [
      hormone('quick dip', ibaPpm.semiHardwoodQuickDip),
      usual('length of the wound', 'mm', 10, 15, 25),
      usual('leaves left on', '', 2, 3, 4, 'large leaves halved'),
    ],
    failures: leafyFailures,
    aftercare: [
      weeks(0, 2, 'Mist so that leaves never dry; shade; take out fallen leaves.'),
      weeks(2, 8, 'Mist less by and by; keep the base warm. Tug test each week from week 5.'),
      weeks(8, 11, 'Halve the mist, then stop; more air each day.'),
      weeks(11, 15, 'Pot, shade for a week, then feed and give light.'),
    ],
    cautions: ['blade', 'tools', 'hormone', 'electricity', 'heat', 'sap', 'medium'],
  },
  {
    method: 'hardwood_cutting',
    pictured: 'hardCut',
    summary: 'Ripe leafless wood, base warm and top cold, stuck right way up.',
    goodFor: 'Fig, grape, mulberry, pomegranate, blueberry, currants, plum and pear stocks: cheap, no mist.',
    notFor: 'Evergreens in leaf, and fruits that only callus from ripe wood.',
    needs: {
      tools: [
        'Secateurs or saw',
        'Twine and labels',
        'Hormone in a small dish',
        'Box with bottom heat, or a well drained bed',
      ],
      wood: 'Last season’s shoots, pencil thick, ripe and at rest, from the lower and middle part; no frosted or pithy tips.',
      stock: null,
      season: 'After leaf fall until well before buds swell.',
    },
    steps: [
      step(
        'hardCut',
        'Cut lengths: square below a bud at the base, sloping above a bud at the top; throw the thin tip away.',
        'Every piece lies the same way from the first cut on.',
        'The slope marks the top: a cutting stuck upside down does not root.',
      ),
      step(
        'hardBundled',
        'Dip the bases, bundle with the bases level, stand them in moist medium over bottom heat; keep the tops cold.',
        'Thermometer at the base; tops in cool air; buds still shut.',
        'Roots must start before buds: warm tops spend the wood’s food on leaves that will wilt.',
      ),
      step(
        'hardStuck',
        'At the first root points, stick deep: one or two buds above the ground, and firm hard.',
        'Slope up, no hollow under the base, root points not rubbed off.',
        'Deep wood does not dry; a gap of air under the base does the same harm as drought.',
      ),
      step(
        'hardRooted',
        'Keep weeds off and water; in autumn lift, grade and choose one shoot.',
        'Roots all round the base and from the nodes.',
        'Shoots can come from stored food alone: leaves are not roots, so look before counting.',
      ),
    ],
    measures: [
      hormone('quick dip', ibaPpm.hardwoodQuickDip),
      usual('thickness', 'mm', 6, 10, 20),
      usual('buds above the ground', '', 1, 2, 2),
    ],
    failures: [
      fails(
        'Leaves in spring, then sudden wilt',
        'buds before roots: tops too warm',
        'not firmed',
        'dry spring',
      ),
      fails('Base mouldy in the box', 'too wet', 'too warm too long', 'wood not ripe'),
      fails('Fat callus, no roots', 'left over heat too long', 'wood from the wrong part of the shoot'),
      fails('Nothing at all', 'upside down', 'dried or frosted wood'),
    ],
    aftercare: [
      weeks(0, 4, 'Base warm, top cold. Look at a bundle each week; stick at the first root points.'),
      weeks(4, 10, 'Firm again after frost; keep moist, not wet; no feed.'),
      weeks(10, 20, 'Weeds off, water in dry weeks, rub out all shoots but the best.'),
      weeks(20, 48, 'Stake if needed; lift at leaf fall and grade by root first.'),
    ],
    cautions: ['blade', 'tools', 'hormone', 'electricity', 'sap', 'lifting'],
  },
  {
    method: 'cladode_cutting',
    pictured: 'cladodeStuck',
    summary: 'A length of succulent stem, dried before it is stuck, shallow and upright.',
    goodFor: 'Dragon fruit and other climbing cacti: true to type, fast, no mist.',
    notFor: 'Stems with rot or virus patterns, and wet cold months.',
    needs: {
      tools: [
        'Clean knife or saw',
        'Shade bench with moving air',
        'Pots with a stake',
        'Soft ties',
        'Thick gloves',
      ],
      wood: 'Mature, dark, firm stem of last season that has not fruited out; from a marked, clean mother.',
      stock: null,
      season: 'Warm and dry weather.',
    },
    steps: [
      step(
        'cladodeCut',
        'Cut through the narrow joint; mark which end was up.',
        'One clean cut; blade wiped before the next mother.',
        'A stem stuck upside down roots badly and grows crooked; sap carries virus and rot.',
      ),
      step(
        'cladodeDried',
        'Trim the flesh at the base to a cone around the woody core; dry in shade, upright.',
        'Cut face dry, corky and pale, not shiny.',
        'Roots come from the core; a wet cut in wet medium rots.',
      ),
      step(
        'cladodeStuck',
        'Stick shallow, just deep enough to stand, and tie to a stake.',
        'Base covered, ribs above; medium barely moist.',
        'Deep sticking keeps the flesh wet. Without a stake it rocks, and new roots tear.',
      ),
      step(
        'cladodeRooted',
        'Water when roots hold it; keep one strong new shoot and tie it up.',
        'A new shoot with clean spines; roots hold the ball.',
        'A shoot can come before roots: tug gently before counting.',
      ),
    ],
    measures: [
      usual('drying before sticking', 'days', 3, 7, 14),
      usual('depth of sticking', 'mm', 30, 50, 80),
    ],
    failures: [
      fails(
        'Brown wet base',
        'stuck before it was dry',
        'medium too wet or too fine',
        'rot came with the mother',
      ),
      fails('Shrivels without roots', 'too much sun', 'too cold', 'no water once it was dry'),
      fails('Pale, mottled new shoots', 'virus in the mother', 'sun scorch'),
    ],
    aftercare: [
      weeks(0, 2, 'Half shade, hardly any water.'),
      weeks(2, 6, 'Water sparingly when the top is dry; tie as it grows.'),
      weeks(6, 16, 'Feed lightly; one leading shoot; full light by steps.'),
    ],
    cautions: ['blade', 'tools', 'spikes', 'lifting'],
  },
  {
    method: 'root_cutting',
    pictured: 'rootPieces',
    summary: 'Pieces of root that make their own shoots; the end that was nearest the stem stays up.',
    goodFor:
      'Fruits that sucker from the root, on their own roots: some guavas, persimmon, kiwifruit, pomegranate, brambles.',
    notFor: 'Worked trees: the root is the stock, not the cultivar. Variegated plants lose their pattern.',
    needs: {
      tools: ['Spade and secateurs', 'Water to wash roots', 'Deep pots or trays', 'Grit to cover'],
      wood: 'Healthy roots of a young plant at rest, about pencil thick, from near the crown.',
      stock: null,
      season: 'The middle of the rest, when roots are full.',
    },
    steps: [
      step(
        'rootDug',
        'Open one side of the plant; take a few roots: cut square near the stem, sloping at the far end.',
        'No more than a third of the roots of one plant.',
        'Square up, slope down: the two cuts keep the way of growth in sight on the bench.',
      ),
      step(
        'rootPieces',
        'Cut into even pieces in the same fashion; wash; keep moist.',
        'Every square end points the same way.',
        'Shoots come from the end nearest the stem, roots from the far end.',
      ),
      step(
        'rootLaid',
        'Set thick pieces upright with the square end level with the surface; lay thin ones flat; cover with grit.',
        'No piece with the slope up; cover thin and open.',
        'Upside down, a shoot must grow round the whole piece and often does not arrive.',
      ),
      step(
        'rootShot',
        'Wait for new roots before moving on; then pot.',
        'New white roots at the lower end, not only shoots above.',
        'Shoots live on stored food for weeks: leaves are not roots.',
      ),
    ],
    measures: [
      usual('thickness of the piece', 'mm', 5, 9, 15),
      usual('share of roots taken from a plant', '%', 10, 25, 33),
    ],
    failures: [
      fails('Pieces rot', 'too wet and too warm at once', 'skinned or bruised in washing'),
      fails('Shoots, then death', 'potted before new roots came', 'let dry out'),
      fails('Wrong plant comes up', 'root of the stock taken', 'pieces of two mothers mixed'),
    ],
    aftercare: [
      weeks(0, 4, 'Cool, moist, dark or under grit; hardly any water.'),
      weeks(4, 10, 'Light as shoots show; water with care.'),
      weeks(10, 20, 'Check for new roots; pot; thin to one shoot.'),
    ],
    cautions: ['blade', 'tools', 'lifting', 'medium'],
  },
]
