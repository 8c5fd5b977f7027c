import { ibaPpm } from '../facts/general/hormone-strength.ts'
import { fails, hormone, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

export const layerGuides: readonly Guide[] = [
  {
    method: 'air_layer',
    pictured: 'ringWrapped',
    summary: 'Roots are made on the branch before it is cut off: ring, scrape, pack, wrap, wait.',
    goodFor:
      'Lychee, longan, guava, wax jambu, lime, pomegranate, fig: large own-rooted plants that fruit early.',
    notFor:
      'Large numbers from few mothers, and sites where the seedling root is needed against wind or drought.',
    needs: {
      tools: [
        'Sharp knife or ringing pliers',
        'Clear film and ties',
        'Moss or coir, soaked and wrung out',
        'Hormone paste and brush',
        'Labels',
      ],
      wood: 'Upright branch in good light, flush finished and hardened, pencil to thumb thick, no flower or fruit.',
      stock: null,
      season: 'Warm growing weather, bark slipping.',
    },
    steps: [
      step(
        'ringCut',
        'Cut two rings through the bark, joined by a slit, and lift the bark between them off.',
        'Ring one and a half times as wide as the branch is thick; wood not nicked.',
        'A narrow ring is bridged by callus: food flows down past it again and no roots come.',
      ),
      step(
        'ringScraped',
        'Scrape the bare wood until nothing slippery is left, then brush hormone on the upper lip.',
        'Dry to the thumb all round; the upper lip clean and whole.',
        'The slime is cambium: left on the wood, it grows new bark across the ring. Roots come from the upper lip, where food gathers.',
      ),
      step(
        'ringPacked',
        'Pack damp moss around the ring, well over the upper lip.',
        'A drop, not a stream, when squeezed. No gap at the lip.',
        'Dry moss gives no roots; wet moss rots the lip.',
      ),
      step(
        'ringWrapped',
        'Wrap with film, tie tight below and above, label with mother, date and name.',
        'No water can run in from above; no fold open at the ends.',
        'Rain under the wrap rots the roots; a leak dries them. An unnamed layer is no plant.',
      ),
      step(
        'ringRooted',
        'When roots fill the ball and turn from white to cream, cut below the lower tie.',
        'Roots on all sides through the film, branched; not only two or three.',
        'Cut on the first few roots, the plant wilts in the pot.',
      ),
      step(
        'layerPotted',
        'Film off, ball kept whole, pot at once; halve the leaves; stake; deep shade and mist.',
        'Ball not broken, top reduced, stem tied so that it cannot rock.',
        'Brittle new roots carry a whole top: most losses come in the weeks after cutting.',
      ),
    ],
    measures: [
      usual('ring against branch', 'times as wide', 1, 1.5, 2),
      hormone('paste or brush', ibaPpm.airLayerPaste),
      usual('leaves taken off at potting', '%', 30, 50, 70),
    ],
    failures: [
      fails('Callus across the ring, no roots', 'ring too narrow', 'cambium not scraped off'),
      fails(
        'Moss dry and hard',
        'film torn or badly tied',
        'birds or ants: cover with foil',
        'moss packed dry',
      ),
      fails(
        'Branch yellows above the ring',
        'wood cut too deep',
        'branch too weak or shaded',
        'tied too tight',
      ),
      fails(
        'Dies within weeks of cutting',
        'cut too early',
        'too much leaf left',
        'ball broken',
        'too little shade',
      ),
    ],
    aftercare: [
      weeks(0, 4, 'On the tree: check each week for tears and dry balls; wet with a syringe if need be.'),
      weeks(4, 10, 'On the tree: look for roots; cut only what has filled its ball.'),
      weeks(10, 14, 'In the pot: deep shade, mist or a closed tent, no feed; take off flowers.'),
      weeks(14, 24, 'Shade by steps to open; feed as the new flush hardens.'),
    ],
    cautions: ['blade', 'tools', 'hormone', 'sap', 'ladder', 'heat'],
  },
  {
    method: 'mound_layer',
    pictured: 'moundFull',
    summary: 'A plant cut to the ground each winter; its shoots root in a mound and are lifted.',
    goodFor:
      'Clonal rootstocks of apple, pear and cherry; hazel, guava: years of even rooted shoots from one bed.',
    notFor: 'Short runs: a bed takes years to bear. Sick ground: it cannot be changed under a bed.',
    needs: {
      tools: [
        'Secateurs or mower for the stool',
        'Loose sawdust, soil or both',
        'Hoe or ridger',
        'Fork for lifting',
      ],
      wood: 'Stools of a clean, named clone planted a year before, well rooted.',
      stock: null,
      season: 'Cut back in winter; mound as shoots grow; lift at leaf fall.',
    },
    steps: [
      step(
        'stoolCut',
        'In winter cut all stems back to just above the ground.',
        'Short clean stubs, no long snags; old mound cleared off.',
        'New shoots must start low, so that their base lies in the mound.',
      ),
      step(
        'moundFirst',
        'When shoots are a hand high, mound half their height with loose moist medium.',
        'Medium between the shoots too, not only around; tips free.',
        'Roots come only where the base is dark, moist and airy while it is still young.',
      ),
      step(
        'moundFull',
        'Mound again two or three times as they grow, up to a hand and a half.',
        'Never more than half of the shoot covered; mound kept moist in dry weeks.',
        'A shoot that has turned woody in the light hardly roots.',
      ),
      step(
        'moundLifted',
        'At leaf fall open the mound and cut each rooted shoot close above the stool.',
        'Roots on every shoot before it is bundled; stubs short.',
        'Shoots without roots go to the fire or into the cutting bed: they are not layers.',
      ),
    ],
    measures: [
      usual('height of the finished mound', 'mm', 150, 200, 300),
      usual('share of the shoot covered', '%', 30, 50, 50),
      hormone('where shoots are ringed', ibaPpm.moundLayerRinged),
    ],
    failures: [
      fails('Strong shoots, few roots', 'mounded too late', 'mound dry', 'medium too heavy'),
      fails('Weak and few shoots', 'stool too young or cut too hard in its first year', 'hungry or dry bed'),
      fails('Gaps and galls in the bed', 'soil disease: close the bed', 'sick mother'),
    ],
    aftercare: [
      weeks(0, 4, 'Weeds off; first mound as shoots reach a hand.'),
      weeks(4, 16, 'Mound again; water; watch for aphids and mildew.'),
      weeks(16, 30, 'Leave alone; keep moist; let the wood ripen.'),
      weeks(30, 34, 'Lift at leaf fall, grade by stem and root, uncover the stools.'),
    ],
    cautions: ['blade', 'tools', 'hormone', 'lifting'],
  },
  {
    method: 'simple_layer',
    pictured: 'layerPegged',
    summary: 'A low supple shoot bent into the ground, held there and cut off when it has rooted.',
    goodFor: 'A few certain plants: grape, hazel, kiwifruit, gaps in a row filled from the neighbour.',
    notFor: 'Numbers, stiff wood, or ground full of disease.',
    needs: {
      tools: ['Spade', 'Knife', 'Peg or hooked wire', 'Stake and soft tie', 'Label'],
      wood: 'Low shoot of last season, long and supple, still on its mother.',
      stock: null,
      season: 'Early spring, or when rains begin.',
    },
    steps: [
      step(
        'layerBent',
        'Open a small trench and bend the shoot down into it, tip up again.',
        'Bend where the shoot is still supple; no crack at its foot.',
        'At a sharp bend the downward flow is slowed: that is where roots come.',
      ),
      step(
        'layerNicked',
        'Cut a slanting tongue on the underside of the bend, towards the tip, and prop it open.',
        'No deeper than half the stem; cambium shows along both edges.',
        'A tongue that closes again heals; held open, its edge makes roots.',
      ),
      step(
        'layerPegged',
        'Peg it down, cover with moist crumbly soil, stake the tip upright, label.',
        'It cannot lift or rock; the tip has leaves in the light.',
        'Each movement tears the first root hairs.',
      ),
      step(
        'layerSevered',
        'When roots hold, cut it off on the mother’s side; lift one season later or at leaf fall.',
        'Resists a pull; roots on the tip’s side of the nick.',
        'Cut free first and lifted later, it learns to live on its own roots in place.',
      ),
    ],
    measures: [
      usual('depth of the bend', 'mm', 80, 120, 200),
      usual('depth of the nick', '% of the stem', 30, 40, 50),
    ],
    failures: [
      fails('No roots after a season', 'nick closed', 'soil dried out', 'peg let go'),
      fails('Shoot breaks', 'bent too sharp or too cold', 'nick too deep'),
      fails('Dies after lifting', 'cut and lifted on the same day', 'roots left dry'),
    ],
    aftercare: [
      weeks(0, 8, 'Keep the spot moist; mulch; check the peg.'),
      weeks(8, 24, 'Weeds off; take away suckers that rob it.'),
      weeks(24, 36, 'Test by a gentle pull; sever when it holds.'),
      weeks(36, 48, 'Lift at rest, cut back by a third, pot or plant.'),
    ],
    cautions: ['blade', 'tools', 'lifting'],
  },
]
