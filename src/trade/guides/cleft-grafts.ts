import { fails, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

export const cleftGuides: readonly Guide[] = [
  {
    method: 'top_wedge_graft',
    pictured: 'wedgeFit',
    summary:
      'A wedge let down into the split top of a seedling, tied and bagged: the everyday graft of the pot nursery.',
    goodFor:
      'Mango, avocado, macadamia, guava, sapodilla, cherimoya, jaboticaba, cacao, passionfruit on potted seedlings.',
    notFor:
      'Stocks much thicker than the scion (use a bark or veneer graft), and stocks that stand dry or sick.',
    needs: {
      tools: [
        'Razor-sharp knife',
        'Secateurs',
        'Stretch tape or film',
        'Clear bag and tie',
        'Disinfectant',
        'Labels',
      ],
      wood: 'Scion of a finished flush, firm, buds swelling but not open; leaves taken off some days before or at cutting.',
      stock: 'Seedling in active growth, pencil thick, with healthy leaves left below the cut.',
      season: 'When both grow: spring, and after the summer flush has hardened.',
    },
    steps: [
      step(
        'wedgeStock',
        'Top the stock above a few healthy leaves and split it straight down the middle.',
        'Split no longer than the wedge; both halves of one thickness.',
        'Leaves below feed the union; a long split gapes at the bottom and rots.',
      ),
      step(
        'wedgeScion',
        'Cut the scion’s base to a wedge with two long flat cuts.',
        'One stroke a side, both of one length; no wave; do not touch the faces.',
        'Flat on flat leaves no gap for the callus to fill.',
      ),
      step(
        'wedgeFit',
        'Slide the wedge down until its shoulders sit on the stock.',
        'The green line meets the green line on both sides; if the scion is thinner, on one side exactly, not in the middle.',
        'Only cambium that touches cambium grows together. Wood on wood does nothing.',
      ),
      step(
        'wedgeTied',
        'Tie from below up, tight, each turn over half of the last; seal the tip; label.',
        'No turn open, no wedge shifted while tying; water cannot run under the tape.',
        'Tiles shed water, and moisture under the wrap rots the union. Pressure keeps the lines on each other.',
      ),
      step(
        'wedgeBagged',
        'Cover scion and union with a clear bag tied below the union; shade.',
        'Dew inside, no leaf of the scion against the film, never in full sun.',
        'A leafless scion has no roots yet: it must not lose water for weeks.',
      ),
      step(
        'wedgePushed',
        'When buds have pushed, open the bag by steps; slit the tape at the back when the union is firm; rub off stock shoots.',
        'Leaves stay firm a full day with the bag open; callus shows along both sides.',
        'Tape left on strangles; stock shoots take everything the roots send up.',
      ),
    ],
    measures: [
      usual('stock stem at the cut', 'mm', 5, 8, 12),
      usual('scion thickness', 'mm', 5, 8, 12, 'the same as the stock, or thinner'),
      usual('length of the wedge', 'mm', 20, 30, 40),
    ],
    failures: [
      fails('Scion shrivels in two weeks', 'dry wood or slow hands', 'bag leaked', 'cambium did not meet'),
      fails('Scion goes black from the cut', 'water under the tape', 'dirty blade', 'latex not wiped off'),
      fails(
        'Buds push, then wilt',
        'food of the stick used up before the union',
        'bag opened too soon',
        'too hot',
      ),
      fails(
        'Union breaks off later',
        'only one side took',
        'tape taken off too early',
        'stock and scion do not suit',
      ),
    ],
    aftercare: [
      weeks(0, 3, 'Shade, bag shut, no water from above. Rub off stock shoots each week.'),
      weeks(3, 6, 'Buds push: corner of the bag open, then half, then off on a dull day.'),
      weeks(6, 10, 'Slit the tape opposite to the buds; stake; feed lightly.'),
      weeks(
        10,
        20,
        'More light by steps; remove stock leaves below the union when the scion has two flushes.',
      ),
    ],
    cautions: ['blade', 'tools', 'sap', 'heat'],
  },
  {
    method: 'epicotyl_graft',
    pictured: 'stoneFit',
    summary: 'A very young seedling, still on its stone, worked while its stem is red and soft.',
    goodFor: 'Mango and jackfruit in numbers, weeks after sowing; little nursery time.',
    notFor: 'Old, green and woody seedlings, and places that cannot be kept humid.',
    needs: {
      tools: [
        'Razor blade or fine knife',
        'Thin film',
        'Closed humid tent',
        'Pots and damp medium',
        'Labels',
      ],
      wood: 'Scion stripped of its leaves some days before, buds swollen, as thick as the seedling.',
      stock: 'Seedling some weeks old, stem still soft and coppery, stone firmly attached.',
      season: 'As the stones sprout, in the warm wet months.',
    },
    steps: [
      step(
        'stoneSeedling',
        'Lift the seedling with its stone and cut the top off a few fingers above it.',
        'Stone stays on; roots wrapped wet; stem still soft.',
        'The stone is the only store of food until the union works.',
      ),
      step(
        'stoneSplit',
        'Split the stem down the middle.',
        'Blade guided, no side crushed; stop well above the stone.',
        'Soft tissue tears: a torn half does not knit.',
      ),
      step(
        'stoneFit',
        'Cut the scion to a wedge of the same length and slide it home.',
        'Green line on green line, on both sides.',
        'Young cambium joins fast, but only where it touches.',
      ),
      step(
        'stonePotted',
        'Wrap with thin film, pot with the stone just under the surface, into the humid tent.',
        'Union clear of the medium; wet air, not wet cut.',
        'Buried, the union rots; in dry air the scion is lost in days.',
      ),
    ],
    measures: [
      usual('cut above the stone', 'mm', 40, 60, 80),
      usual('stock stem at the cut', 'mm', 4, 6, 8),
      usual('length of the wedge', 'mm', 30, 40, 60),
      usual('age of the seedling', 'days', 14, 21, 28),
    ],
    failures: [
      fails('Stock rots at the stone', 'planted too deep or too wet', 'stone knocked off'),
      fails('Scion dries', 'tent not closed', 'buds not swollen', 'thicker than the stock on both sides'),
      fails('Takes, then stands still', 'stock too old when worked', 'cold'),
    ],
    aftercare: [
      weeks(0, 3, 'Humid tent, deep shade; look for rot each second day.'),
      weeks(3, 5, 'Buds push: air by steps; stock shoots off.'),
      weeks(5, 8, 'Film slit; pot on; light shade.'),
      weeks(8, 20, 'Feed; stake; grade out slow ones.'),
    ],
    cautions: ['blade', 'tools', 'sap', 'heat'],
  },
  {
    method: 'cleft_graft_topwork',
    pictured: 'cleftSection',
    summary:
      'Two scions in the split of a sawn limb, cambium matched at the edges: an old tree given a new head.',
    goodFor: 'Apple and pear limbs while the bark does not slip yet.',
    notFor: 'Very thick limbs, stone fruit that gums, trees not worth their years of regrowth.',
    needs: {
      tools: [
        'Saw',
        'Grafting chisel or heavy knife, mallet',
        'Wedge to hold open',
        'Knife',
        'Wax or sealing paste',
        'Labels',
      ],
      wood: 'Scion at rest, last season’s wood, stored cold; two or three buds.',
      stock: 'Sound limb, straight grain, no knot for a hand’s breadth below the cut.',
      season: 'Late winter to bud swell.',
    },
    steps: [
      step(
        'limbCleft',
        'Saw the limb square, smooth the edge, split across the middle and hold the split open.',
        'Split straight through the pith, bark not torn.',
        'A torn edge is an edge without cambium.',
      ),
      step(
        'cleftScion',
        'Cut each scion to a long wedge, thicker on the side that will face out.',
        'A bud just above the shoulder on the outer side; seen end-on it is a keystone.',
        'The thicker outer edge takes the pressure of the limb: that is where the cambium is.',
      ),
      step(
        'cleftSection',
        'Set one scion at each end of the split, its cambium on the limb’s cambium.',
        'Look end-on: bark of the limb is thicker, so the scion stands a little inside the limb’s outer edge.',
        'Bark flush with bark misses: match the green lines, not the outsides. A slight tilt makes the lines cross for certain.',
      ),
      step(
        'cleftSet',
        'Take the wedge out; the limb must grip both scions.',
        'Neither can be pulled out by hand.',
        'Grip keeps the lines together; if loose, tie the limb round.',
      ),
      step(
        'cleftSealed',
        'Seal the whole top, the split down both sides and the scion tips; label.',
        'No pinhole, no hollow under the wax; look again after a week.',
        'A cut limb dries from the top; rain in the split rots it.',
      ),
    ],
    measures: [
      usual('limb thickness', 'mm', 25, 50, 80),
      usual('length of the wedge', 'mm', 30, 40, 60),
      usual('buds left on a scion', '', 2, 3, 4),
    ],
    failures: [
      fails(
        'Buds open, then die in early summer',
        'cambium touched only at a point',
        'wax cracked',
        'food of the stick used up',
      ),
      fails(
        'One scion takes, one does not',
        'limb not gripping on that side',
        'scion set flush with the outer bark',
      ),
      fails('Limb rots below', 'split left open', 'two takes kept too long without thinning'),
      fails('Scion blown out', 'no stake in the first summer', 'grew too fast: tip it'),
    ],
    aftercare: [
      weeks(0, 2, 'Look at the wax weekly; close cracks.'),
      weeks(2, 10, 'Buds push; rub off some stock shoots, not all: the limb needs leaves.'),
      weeks(10, 20, 'Tie shoots to a splint; pinch the weaker scion back.'),
      weeks(40, 52, 'Choose one scion; shorten the other; whiten bare bark against sun.'),
    ],
    cautions: ['blade', 'tools', 'saw', 'ladder', 'hotWax'],
  },
]
