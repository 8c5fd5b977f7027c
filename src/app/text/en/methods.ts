/** The library of methods; `drawn` says of each drawing what stands on it. */
export const methods = {
  title: 'Methods',
  says: 'How each cut is made: what to do, what to look at, and why. Every figure says where it comes from.',
  findHint: 'Method or purpose',
  empty: 'No method fits.',
  used_one: '{{shown}} of your protocols',
  used_other: '{{shown}} of your protocols',
  all: 'All methods',
  missing: 'There is no such method.',
  how: 'How it is done',
  print: 'Print the bench card',
  printSmall: 'On A5, both sides',
  goodFor: 'For',
  notFor: 'Not for',
  needs: {
    title: 'What it needs',
    tools: 'At hand',
    wood: 'Wood',
    stock: 'Rootstock',
    season: 'When',
  },
  steps: {
    title: 'Step by step',
    look: 'Look:',
    why: 'Why:',
    number: 'Step {{shown}}',
    says: 'Common practice. Up is up in every drawing.',
  },
  legend: {
    title: 'Lines in the drawings',
    cambium: 'cambium',
    bark: 'bark',
    wood: 'wood, cut face',
    knife: 'way of the blade',
    move: 'moved so',
    gone: 'taken off',
    tie: 'tie',
    wax: 'wax or paste',
  },
  figures: {
    title: 'Figures',
    says: 'Typical, and the range that holds nine cases of ten. Hormone: a range only; follow the label.',
    measure: 'Measure',
    typical: 'Typical',
    range: 'Range',
    basis: 'Basis',
    own: 'Your protocols',
    interpolated: 'published ends, middle between them',
    rangeRemembered: 'published middle, range from memory',
    sources: 'Sources',
  },
  fruits: {
    title: 'Fruits made so',
    says: 'The share that succeeds, as the facts or you have it. What it counts stands with the fruit.',
    none: 'The facts know no fruit that is made so.',
    line: '{{importance}}, {{share}} ({{range}}), {{basis}}',
  },
  own: {
    title: 'Yours beside the built-in',
    says: 'What your own batches of this method taught, at the step that tells whether it worked. The other steps stand under Rates.',
    none: 'No batch of this method has been counted here yet. What the plan assumes stands in the protocols.',
    unused: 'No kind is made by this method here.',
    kind: 'Kind and step',
    yours: 'Yours',
    builtIn: 'Built in',
    batches: 'Batches',
    counted: '{{survived}} of {{entered}}',
    rates: 'All rates',
    protocols: 'Protocols with this method',
  },
  failures: { title: 'What failure looks like', cause: 'Because' },
  aftercare: {
    title: 'Aftercare by week',
    weeks: 'Weeks {{from}} to {{to}}',
    says: 'Counted from the act; common practice. The plan goes by the days of your protocol.',
  },
  cautions: { title: 'Cautions' },
  card: {
    kind: 'Bench card',
    key: 'Key figures',
    aftercare: 'Aftercare',
    wk: 'wk {{from}}–{{to}}',
    tray: 'Tray',
    batch: 'Batch',
    name: 'Name',
    date: 'Date',
    mother: 'Mother',
    number: 'Number',
    ownMark: 'own',
    foot: 'Figures: p published, c common practice, m from memory, own: from your protocols. Follow the label, local rules and licensed practice.',
    mark: {
      published: 'p',
      'common practice': 'c',
      'from memory': 'm',
      'recorded here': '',
      'set by the nursery': '',
    },
  },
  drawn: {
    seedFloat:
      'A vessel of water: sound seed lies on the bottom, one that floats is taken out and struck off.',
    seedSown: 'A cell cut open: the seed lies on its side, as deep under the surface as it is thick.',
    seedUp:
      'A germinated seed in the ground: the root goes straight down, the shoot straight up with three leaves.',
    seedPricked:
      'Two deep pots: in one the root hangs straight, in the other it is hooked upward and struck off.',
    seedlingWorkable:
      'A potted seedling with one straight stem; a caliper is closed on it at working height.',
    softTaken: 'A soft leafy shoot, cut across below a node; beside it a tip that snapped clean when bent.',
    softMade:
      'A cutting, base down: cut square below a node, two lower leaves gone, two upper leaves halved, tip kept.',
    dipped: 'The very base of a leafy cutting stands in a shallow dish of dip.',
    mistBed:
      'A bed cut open: cuttings under two mist nozzles, heating tubes below them, a thermometer at their bases.',
    cuttingRooted:
      'A cutting in its pot, callus and roots at its base, new leaves above; the clear cover is being lifted on one side.',
    semiTaken: 'A firm shoot with leaves: cut below a node at the woody base, and the soft tip cut off.',
    semiWounded:
      'The base of a cutting, enlarged: a long sliver of bark sliced off one side, cambium along both edges of the wound.',
    hardCut:
      'A leafless shoot in lengths: each square at its base and sloping at its top, the thin tip thrown away; an arrow points up.',
    hardBundled:
      'Two tied bundles upright in a box, bases level in moist medium above warmth, tops in the open; a thermometer at the bases.',
    hardStuck:
      'A leafless cutting set deep and upright: two buds above the ground, three below, soil pressed to it.',
    hardRooted: 'The same cutting with roots from base and nodes, and leaves on its two upper buds.',
    cladodeCut: 'A ribbed succulent stem cut through at its narrow joint; an arrow points up.',
    cladodeDried:
      'The stem upright over slats in moving shade air; its base is trimmed to a cone around the bare core.',
    cladodeStuck: 'The stem set shallow in a pot and tied twice to a stake.',
    cladodeRooted: 'The stem with a brush of roots at its base and a new shoot at its top.',
    rootDug: 'A plant in open ground: one root cut square near the stem and slanting at its far end.',
    rootPieces:
      'Three pieces of root upright: each flat at the top, slanting at the bottom; an arrow points up.',
    rootLaid:
      'Thick pieces upright in a pot, flat end up just under the surface; a thin piece lying flat in a tray.',
    rootShot:
      'A piece of root in a pot: two leafy shoots from its flat top, new roots from its slanting foot.',
    ringCut:
      'A branch with a ring of bark lifted off, half again as wide as the branch is thick; slippery cambium still on the bare wood.',
    ringScraped: 'The knife scrapes the cambium off the bare ring; hormone is brushed on the upper lip.',
    ringPacked:
      'Damp moss pressed around the ring, reaching well over both lips; two drops squeezed from it.',
    ringWrapped: 'The ball of moss wrapped in film, tied below and above, a label hanging from it.',
    ringRooted:
      'Roots spread from the upper lip through the wrapped ball; the branch is cut below the lower tie.',
    layerPotted:
      'The layer in a pot under shade cloth: ball of roots whole, leaves halved, stem tied to a stake.',
    stoolCut: 'A stool at ground level: five stems cut back to short stubs.',
    moundFirst: 'Five young shoots rise from the stool; medium is mounded to half their height.',
    moundFull: 'The mound is higher, the shoots longer; roots come from their covered bases.',
    moundLifted: 'The mound is gone; five shoots with roots at their bases are cut off just above the stool.',
    layerBent: 'A low shoot bent from its mother down into a trench, its tip turned up again.',
    layerNicked:
      'The bend enlarged: a slanting cut on its underside towards the tip, propped open; cambium on both edges.',
    layerPegged: 'The bend held under the soil by a hooked peg; the tip tied to a stake and labelled.',
    layerSevered: 'Roots at the buried bend; the shoot is cut between them and the mother.',
    wedgeScion:
      'A scion from two sides: as a narrow wedge with cambium along both edges, and with its arched cut face.',
    wedgeStock: 'A stock topped above its leaves, the ring of cambium on its cut, split down the middle.',
    wedgeFit:
      'The wedge let down into the split until its shoulders sit: one line of cambium down each side.',
    wedgeTied: 'The union tied from below upward, turn over turn; the tip waxed; a label on the stock.',
    wedgeBagged: 'The potted graft with a clear bag over scion and union, tied below the union.',
    wedgePushed: 'The scion in leaf; the tape is slit down its back, a stock shoot taken off.',
    limbCleft: 'A sawn limb split across its middle and held open by a wedge driven in from above.',
    cleftScion:
      'A scion cut to a long wedge; in cross-section its outer, bark-covered side is the thicker one.',
    cleftSet: 'Two scions stand at the two ends of the split, their wedges inside the limb.',
    cleftSection:
      'The limb from above: two wedges in the split, the cambium of each upon the limb’s ring of cambium.',
    cleftSealed: 'Wax over the whole sawn top, down the split and on both scion tips; a label.',
    stoneSeedling: 'A very young seedling on its stone; the top is cut off a few fingers above the stone.',
    stoneSplit: 'The short stem, stone attached, split down the middle from its cut.',
    stoneFit:
      'A scion’s wedge let down into the short stem above the stone: cambium on cambium down both sides.',
    stonePotted: 'The tied graft potted with its stone just below the surface, under a clear tent; a label.',
    whipSlant:
      'Scion above, stock below, cut on one matching long slant, twice as long as the stem is thick.',
    whipTongue: 'Both slants with a tongue cut into each; arrows push them towards one another.',
    whipShut: 'The two interlocked: tongue behind tongue, cambium running through on both sides.',
    whipOneSide: 'A thinner scion set to one side of the stock: cambium runs through on that side only.',
    whipTied: 'The join wound from below upward, three buds above it, tip waxed, a label.',
    hotPipe:
      'Three grafts lie across a warm channel: joins inside, roots in moist medium on one side, buds in the cold on the other.',
    hotCallus: 'The join with beads of callus along its edges on both sides.',
    hotPlanted: 'The graft planted with its join above the ground, roots below, leaves opening.',
    omegaCut: 'Scion with a key and stock cutting with its keyhole; a bud of the stock is cut out.',
    omegaShut: 'Key in keyhole: cambium runs through on both sides.',
    waxDipped: 'The graft held upside down, scion and join dipped into warm wax; a thermometer in the wax.',
    callusBox: 'Grafts upright in a box of moist medium over warmth, joins in warm damp air, tips waxed.',
    onCuttingRooted:
      'The potted graft: roots at the foot of the stock, callus at the join, a shoot from the scion’s bud.',
    nurseGrafted:
      'A nurse seedling on its large seed in a pot; a tip of the clonal stock is wedged and tied on low.',
    etiolated: 'In the dark a long white shoot with tiny leaves grows from the graft.',
    etiolatedRinged:
      'The white shoot ringed near its foot and wounded, inside a sleeve of medium; leaves in the light above.',
    clonalRooted: 'Roots fill the sleeve from the clonal shoot; the nurse seedling is cut away beneath.',
    doubleScion: 'On the rooted clonal stem a fruiting scion is wedged and tied; a label below it.',
    twoPlants: 'A potted stock stands beside a tree; it is brought to a branch of the same thickness.',
    twoFaces:
      'Two stems with faces of one length and height cut into the sides that will meet; cambium round each face.',
    twoJoined:
      'The two stems face to face, tied above and below; the cambium of one runs into that of the other.',
    twoSevered: 'Above the tie the stock’s top is cut off, below it the scion is cut from its mother.',
    veneerStock:
      'A stock with a long shallow face cut into its side, ending in a notch; cambium along both edges.',
    veneerScion: 'A scion with a tip bud: its long arched face, and from the side the short cut on its foot.',
    veneerFit:
      'From the side: the scion’s foot stands in the notch, its face lies on the stock. From the front: cambium down both its edges and across its foot.',
    veneerTied: 'Scion and stock wound together from below upward, tip bud free, a label.',
    veneerTopped: 'The scion in leaf; the stock’s top is cut off just above the union.',
    barkSlit:
      'A sawn limb with its ring of cambium; the bark is slit down from the rim and its edges lifted.',
    barkScion: 'A scion with shoulder and long slant from the side, and its long face from the front.',
    barkSet:
      'From the side: the scion slid between lifted bark and wood, face to the wood, shoulder on the limb.',
    barkSealed: 'Three scions around the rim; wax over top and slits, two ties round the limb, tips waxed.',
    flapStock:
      'A topped stock with its bark peeled down in flaps, cambium on their inner sides; the bare wood is cut out.',
    flapScion:
      'A scion with flat faces cut along its foot, cambium along the edges of each, bark left at the corners.',
    flapSet: 'The scion on the stock’s wood; flaps drawn up over its faces and banded.',
    flapWrapped: 'Foil and clear bag round the union, tied below and above; scion tip waxed; a label.',
    budStick:
      'A budstick with leaf blades cut off, stubs left; beside it one bud enlarged, its shield cut from below upward.',
    tCut: 'A T cut into the bark of the stock, its flaps lifted from the wood.',
    tSlid: 'The shield with its bud slides down between the flaps.',
    tSeated:
      'The shield seated: bud well below the bar, its top trimmed flush with the bar, where cambium meets cambium.',
    tTied: 'Ties below and above the bud, wound from below upward; the bud free; a label.',
    budForced:
      'The bud has grown into a shoot; the stock is cut off above it on a slope, its own shoots taken off.',
    chipStock:
      'A notch in the stock from the side, its lip sloping down and in; and its arched face from the front.',
    chipBud: 'A chip with its bud comes out of the budstick: the same shape as the notch.',
    chipFit:
      'The chip in the notch, foot behind the lip, from the side and from the front; cambium round its edge.',
    chipOneSide: 'A chip narrower than the notch, set to its left side, where cambium lies on cambium.',
    chipTied: 'The whole chip wound with film from below upward; a label.',
    patchTaken: 'A rectangle of bark with its bud moved sideways off the budstick.',
    patchStock: 'A window of the same size opened in the stock, its bark folded down; cambium shows within.',
    patchFit: 'The patch in the window, bud up, touching all four edges; the trimmed flap below it.',
    patchTied: 'Ties above and below the patch, the bud free; a label.',
    suckerDug:
      'A mother plant and a narrow-leaved sucker, both with their bases in the ground; the cut goes down between them.',
    suckerPared: 'The sucker alone: outer skin and roots pared off its base, its top shortened.',
    suckerPlanted: 'The sucker in a pot, base just covered, soil pressed to it.',
    suckerGrown: 'The sucker with three new leaves and new roots.',
    cormPared: 'A corm with its leaf bases taken away, eyes showing in rows.',
    cormCrossed: 'The corm from above: a cross cut through the growing point, eyes in a ring around it.',
    cormBed: 'Three corms level in moist medium in a bin, covered with film, warmed from below.',
    cormShoots: 'A corm with four leafy shoots; one with its own roots has been cut off.',
    flaskOpened: 'An opened flask with three rooted plantlets in jelly; the lid is taken off.',
    flaskRinsed: 'The roots of a plantlet are rinsed in a bowl; bits of jelly float off.',
    plugDome: 'Plantlets in plugs under a closed dome and shade cloth.',
    plugWeaned: 'Larger plantlets with roots; the dome is lifted on one side.',
  },
} as const
