import { fails, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

export const benchGuides: readonly Guide[] = [
  {
    method: 'whip_tongue_graft',
    summary: 'Two long slants with interlocking tongues: the strongest join of two stems of one thickness.',
    goodFor:
      'Apple, pear, plum, cherry, persimmon, kiwifruit: at the bench in winter or on the row in spring.',
    notFor: 'Stems of very unequal thickness, brittle or pithy wood, leafy evergreens in growth.',
    needs: {
      tools: [
        'Single-bevel knife, razor sharp',
        'Tape or rubber strips',
        'Wax',
        'Damp sawdust or bags',
        'Labels',
      ],
      wood: 'Scion at rest, last season, pencil thick, stored cold and sealed.',
      stock: 'Rooted stock or rooted layer of the same thickness, at rest or just waking.',
      season: 'Late winter.',
    },
    steps: [
      step(
        'whipSlant',
        'Cut matching slants on stock and scion, each in one pull.',
        'Flat to the light; as long on both; well over twice as long as the stem is thick.',
        'A long flat slant gives a long line of cambium and no gap.',
      ),
      step(
        'whipTongue',
        'From a third below each tip, cut a tongue down into the face, along the grain.',
        'Tongue thin but not floppy; stems not split.',
        'Tongues lock the graft, so that both hands are free to tie.',
      ),
      step(
        'whipShut',
        'Slide together until the slants close.',
        'Green meets green on both sides; no light through the join; no overlap at the heel.',
        'An overhang at the tip makes a knob of callus and a weak heel.',
      ),
      step(
        'whipOneSide',
        'If the scion is thinner, push it to one side until the lines meet there.',
        'One whole side matched from heel to tip; never centred.',
        'One side that meets takes; two that miss do not.',
      ),
      step(
        'whipTied',
        'Tie firmly over the whole join, wax tip and tie, label, pack moist and cool.',
        'No shift while tying; wax over every cut.',
        'The join must neither move nor dry until callus has closed it.',
      ),
    ],
    measures: [
      usual('stock stem at the cut', 'mm', 6, 9, 14),
      usual('scion thickness', 'mm', 6, 8, 12),
      usual('length of the slant', 'times the stem thickness', 2.5, 3.5, 5),
    ],
    failures: [
      fails(
        'Buds open, then wilt',
        'cambium missed',
        'join moved or dried',
        'too warm: leaves before callus',
      ),
      fails('Mould in the packing', 'too wet, too warm, dirty roots'),
      fails('Knob at the join, breaks in wind', 'overhanging tip', 'tie left on', 'poor match'),
      fails('Only the stock grows', 'scion dead in store: scratch before use', 'stock shoots not rubbed off'),
    ],
    aftercare: [
      weeks(0, 3, 'Callus in moist packing at the temperature of the list; look weekly for mould.'),
      weeks(3, 6, 'Cold until planting; plant or pot before buds run.'),
      weeks(6, 12, 'Join above the ground; rub off stock shoots; one scion shoot.'),
      weeks(12, 20, 'Cut the tie before it bites; stake.'),
    ],
    cautions: ['blade', 'tools', 'hotWax', 'lifting'],
  },
  {
    method: 'bench_graft_hot_callus',
    summary: 'Bench grafts with only the join kept warm while roots and buds stay cold.',
    goodFor: 'Walnut, hazel, persimmon, pecan and other hard ones that callus only in the warm.',
    notFor: 'Apple and pear, which callus in the cool for less trouble.',
    needs: {
      tools: [
        'Grafting knife',
        'Tape, wax',
        'Warm channel or cable with thermostat',
        'Moist sawdust for the roots',
        'Thermometer at the join',
      ],
      wood: 'Scion wholly at rest, thick, well ripened, stored cold.',
      stock: 'Bare-root stock at rest; some wake it in the warm for a week or two before.',
      season: 'Mid to late winter.',
    },
    steps: [
      step(
        'whipTongue',
        'Cut whip and tongue on scion and stock of one thickness.',
        'Same length, flat, tongues thin.',
        'Hard wood forgives less: every gap must be closed by slow callus.',
      ),
      step(
        'whipShut',
        'Close, tie, and wax the scion and the join.',
        'Green meets green on both sides.',
        'In the warm an open cut dries within days.',
      ),
      step(
        'hotPipe',
        'Lay the join in the warm channel, roots in moist sawdust, buds out in the cold.',
        'Thermometer at the join itself; cold air at buds and roots.',
        'Warm join makes callus; warm buds would break and drain it.',
      ),
      step(
        'hotCallus',
        'Take out when callus shows all round.',
        'White beads along the whole edge, not brown; both sides.',
        'Too short: nothing holds. Too long: soft callus breaks and buds start.',
      ),
      step(
        'hotPlanted',
        'Cool down for some days, then pot with the join above the medium.',
        'Handle by the stock; no bending at the join.',
        'Callus is soft as curd: the wood under it has not joined yet.',
      ),
    ],
    measures: [
      usual('stock stem at the cut', 'mm', 8, 12, 18),
      usual('length of the slant', 'times the stem thickness', 2.5, 3.5, 5),
      usual('cool days before planting', 'days', 3, 7, 14),
    ],
    failures: [
      fails('No callus', 'join too cold: measure there', 'wood bled: stock woke too far', 'scion dry'),
      fails('Buds broken in the channel', 'tops too warm', 'left too long'),
      fails('Callus brown', 'too hot', 'dried out', 'dirty blade'),
      fails('Dies after planting', 'join knocked', 'sun or wind before roots worked'),
    ],
    aftercare: [
      weeks(0, 4, 'Hold the temperature of the list at the join; check daily; keep roots moist.'),
      weeks(4, 5, 'Cool, dim, moist.'),
      weeks(5, 10, 'Pot; shade; mist on dry days; stock shoots off.'),
      weeks(10, 24, 'Cut the tie; stake; sun by steps.'),
    ],
    cautions: ['blade', 'tools', 'electricity', 'hotWax', 'lifting'],
  },
  {
    method: 'bench_graft_on_cutting',
    summary:
      'A one-bud scion machine-joined to an unrooted cutting; join and roots made together in a warm box.',
    goodFor: 'Grape on resistant stock by the ten thousand; some leafy citrus and avocado stocks.',
    notFor: 'Stocks that hardly root from cuttings.',
    needs: {
      tools: [
        'Omega cutter or knife',
        'Wax bath with thermostat',
        'Callusing boxes',
        'Moist medium',
        'Warm room',
      ],
      wood: 'Ripe wood of both, from certified mothers, as thick as each other; soaked before use.',
      stock: 'Disbudded cutting of the stock.',
      season: 'Late winter to spring.',
    },
    steps: [
      step(
        'omegaCut',
        'Cut all buds off the stock cutting; punch keyhole and key.',
        'Same thickness; top of the stock up, bud of the scion up.',
        'Stock buds left on grow into suckers below ground for the life of the vine.',
      ),
      step(
        'omegaShut',
        'Press together in one motion.',
        'Bark lines run through on both sides; no light in the join.',
        'The cutter matches shapes, not thickness: unequal stems meet on neither side.',
      ),
      step(
        'waxDipped',
        'Turn it scion down, dip past the join into wax for a moment, cool in water.',
        'Join wholly covered, thin film; wax just liquid.',
        'Wax keeps the join moist for weeks; hot wax kills the bud.',
      ),
      step(
        'callusBox',
        'Stack upright in moist medium, join level, into the warm room; open as buds move.',
        'Warm at the join; mould smelt is mould found.',
        'Warmth joins; air and light then slow the shoot so that roots can catch up.',
      ),
      step(
        'onCuttingRooted',
        'Pot or line out when callus is all round and root points show; grade in autumn.',
        'Bend lightly: the join must not open. Roots all round.',
        'A tongue that opens under the thumb will open under a crop.',
      ),
    ],
    measures: [
      usual('thickness of both', 'mm', 7, 9, 12),
      usual('length of the stock cutting', 'mm', 250, 300, 400),
      usual('time in the wax', 'seconds', 1, 1, 2),
    ],
    failures: [
      fails('Callus only on one side', 'unequal thickness', 'join shifted in the box'),
      fails('Grey mould in the box', 'too wet', 'too warm too long', 'wood not clean'),
      fails('Shoots long and white', 'taken out too late', 'too dark and warm'),
      fails('Suckers from the stock', 'buds not cut out'),
    ],
    aftercare: [
      weeks(0, 3, 'Warm room; check mould and moisture every second day.'),
      weeks(3, 4, 'Harden: cooler, light, air.'),
      weeks(4, 10, 'Potted or planted; mist or mulch; scion roots cut off.'),
      weeks(10, 30, 'Water and feed; grade at leaf fall: join and roots.'),
    ],
    cautions: ['blade', 'tools', 'hotWax', 'electricity', 'lifting'],
  },
  {
    method: 'double_graft_clonal',
    summary:
      'A clonal stock grafted on a nurse seedling, rooted from a shoot grown in the dark, then worked with the fruit.',
    goodFor: 'Avocado on clonal stocks that resist root rot: even trees, worth the year and a half.',
    notFor: 'Any fruit where a cutting or layer of the stock roots, and growers without a dark warm room.',
    needs: {
      tools: [
        'Grafting knife',
        'Dark warm room',
        'Sleeves or tall pots',
        'Ring or clip',
        'Hormone',
        'Film and bags',
        'Labels of two colours',
      ],
      wood: 'Tip of the clonal stock first; later a scion of the fruit.',
      stock: 'Large-seeded nurse seedling, strong and healthy.',
      season: 'Nurse seed fresh in autumn; two graftings and a rooting in between.',
    },
    steps: [
      step(
        'nurseGrafted',
        'Graft a tip of the clonal stock low on the nurse seedling.',
        'Green on green; label: clone, mother, date.',
        'The nurse feeds the clone until it has its own roots. It is not the stock.',
      ),
      step(
        'etiolated',
        'When buds swell, grow on in the dark and warm until the shoot is long and white.',
        'No light at all; check by a dim green lamp, quickly.',
        'Tissue grown in the dark roots; the same tissue in light does not.',
      ),
      step(
        'etiolatedRinged',
        'Ring or clip its base, wound above, brush hormone on the wounds; sleeve and fill with medium; let the top green.',
        'Ring above the nurse graft; wounds just through the skin; tip in the light.',
        'The ring will choke the nurse in time; the dark medium keeps the base white while leaves feed it.',
      ),
      step(
        'clonalRooted',
        'When roots fill the sleeve, cut the nurse away below the ring.',
        'Roots come from above the ring only.',
        'Left on, the nurse’s roots take over, and the tree stands on the wrong stock.',
      ),
      step(
        'doubleScion',
        'Graft the fruiting scion on the clonal stem; bag and tie as for a top wedge.',
        'Two unions in its life, both labelled; stock shoots off.',
        'What is sold is three plants in a row: the middle one is what was paid for.',
      ),
    ],
    measures: [usual('stem at either graft', 'mm', 5, 7, 10), usual('shoot in the dark', 'mm', 80, 150, 300)],
    failures: [
      fails('White shoot rots', 'too wet', 'no air in the dark room', 'handled'),
      fails('No roots in the sleeve', 'light got in', 'greened before it was covered', 'ring not closed'),
      fails(
        'Collapse when the nurse is cut',
        'cut before roots filled the sleeve',
        'ring had not choked the nurse',
      ),
      fails('Uneven trees later', 'nurse roots left on: trace the batch'),
    ],
    aftercare: [
      weeks(0, 8, 'Nurse graft: warm, humid; nurse shoots off.'),
      weeks(8, 14, 'Dark and warm; water sparingly.'),
      weeks(14, 40, 'Sleeve moist; top in light shade; look for roots.'),
      weeks(40, 78, 'Nurse off; scion graft; then as a top wedge.'),
    ],
    cautions: ['blade', 'tools', 'hormone', 'heat', 'electricity', 'lifting'],
  },
]
