import { fails, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

export const barkGuides: readonly Guide[] = [
  {
    method: 'veneer_graft',
    pictured: 'veneerFit',
    summary:
      'A scion laid in a shallow cut on the side of a stock that keeps its top until the take is sure.',
    goodFor:
      'Mango, carambola, sapodilla, loquat, olive: if it fails, the stock is whole and can be worked again.',
    notFor: 'Stocks thinner than the scion, and bark that does not slip.',
    needs: {
      tools: ['Grafting knife', 'Stretch film', 'Bag or open-ended film cover', 'Labels'],
      wood: 'Hardened terminal with a swelling tip bud, leaves off some days before.',
      stock: 'Potted stock thicker than the scion, in growth, bark slipping.',
      season: 'Warm growing months.',
    },
    steps: [
      step(
        'veneerStock',
        'Cut a shallow strip down the smooth side, end it with a short slanting cut inward.',
        'Just into the wood; a notch at the foot; green line along both edges.',
        'The notch holds the scion’s foot; deep cuts bare dead wood.',
      ),
      step(
        'veneerScion',
        'Cut one long face on the scion, and a short one on the back of its foot.',
        'Long face as long and as wide as the cut in the stock; tip bud up.',
        'The two faces of the foot fill the notch with no hollow.',
      ),
      step(
        'veneerFit',
        'Stand the foot in the notch and lay the face on.',
        'Cambium meets along both sides, or wholly along one if the scion is narrower.',
        'One full side takes well; a scion in the middle of a wide cut does not.',
      ),
      step(
        'veneerTied',
        'Tie from below up over the whole cut, tip bud free or under thin film; label.',
        'No water can creep in at the top of the cut.',
        'The upper lip is where rain enters: close it well.',
      ),
      step(
        'veneerTopped',
        'When the bud has pushed, top the stock by steps, last just above the union.',
        'Scion leaves hard before the last cut; slope away from the scion.',
        'The stock’s top feeds roots until the scion can; left too long, it keeps the scion asleep.',
      ),
    ],
    measures: [usual('stock stem at the cut', 'mm', 8, 12, 20), usual('length of the cut', 'mm', 30, 45, 60)],
    failures: [
      fails('Scion green for weeks, never pushes', 'stock not topped', 'tip bud blind'),
      fails('Face brown when opened', 'water from above', 'latex or dirt on the face', 'slow hands'),
      fails('Take on one side, opens later', 'tape off too soon', 'face not flat'),
    ],
    aftercare: [
      weeks(0, 3, 'Shade; no water on the union.'),
      weeks(3, 6, 'Bud moves: bend or shorten the stock by half.'),
      weeks(6, 10, 'Open the film; top above the union; stock shoots off.'),
      weeks(10, 24, 'Stake; feed; sun by steps.'),
    ],
    cautions: ['blade', 'tools', 'sap', 'heat'],
  },
  {
    method: 'bark_graft',
    pictured: 'barkSet',
    summary: 'Scions slid between bark and wood of a sawn limb when the bark slips.',
    goodFor: 'Large limbs of mango, avocado, olive, apple, pecan, persimmon: several scions around the rim.',
    notFor: 'Thin stems, and weeks when the bark sticks.',
    needs: {
      tools: ['Saw', 'Knife', 'Thin nails or strong tape', 'Sealing paste or wax', 'White paint', 'Labels'],
      wood: 'Scion at rest or with buds not yet pushed, kept cold and sealed.',
      stock: 'Sound limb, bark slipping; a nurse limb left on the tree.',
      season: 'Spring, as the bark begins to slip.',
    },
    steps: [
      step(
        'barkSlit',
        'Saw square, smooth the rim, slit the bark down from it and loosen the edges.',
        'Slit through bark only; bark lifts wet and clean.',
        'If it tears it is too early: the cambium parts only when it grows.',
      ),
      step(
        'barkScion',
        'Cut a shoulder and a long slant on one side, a short bevel on the back.',
        'Slant flat and long, point thin, bud on the outer side.',
        'The shoulder sits on the limb’s wood; the thin point slides without tearing bark.',
      ),
      step(
        'barkSet',
        'Slide it down behind the bark, long face to the wood, until the shoulder sits.',
        'Face flat on the wet wood; its edges against the lifted bark.',
        'The limb’s cambium lies on that wood and under that bark: the face must touch it all the way down.',
      ),
      step(
        'barkSealed',
        'Pin or tie round, seal the whole top, slits and tips; shade with white paint; label.',
        'No hollow at the shoulders; water runs off.',
        'Bark that lifts dries; a dry rim dies back past the scions.',
      ),
    ],
    measures: [
      usual('limb thickness', 'mm', 40, 80, 200),
      usual('length of the slant', 'mm', 40, 50, 70),
      usual('length of the slit', 'mm', 40, 60, 80),
    ],
    failures: [
      fails('Scions dry', 'sealed badly: look again in a week', 'sun on the limb'),
      fails('Push strongly, then blow out', 'no splint in the first summer', 'all the force in one limb'),
      fails('Bark dies back between scions', 'too few scions on a thick limb', 'sunburn'),
      fails('None take', 'bark did not slip', 'scion buds already open', 'face away from the wood'),
    ],
    aftercare: [
      weeks(0, 2, 'Seal cracks; keep ants off.'),
      weeks(2, 8, 'Buds push; keep a nurse limb; thin stock shoots, leave some for shade.'),
      weeks(8, 20, 'Splints; pinch; cut ties that bite.'),
      weeks(
        20,
        52,
        'Choose the leader; keep the others short to close the wound; take the nurse limb off next year.',
      ),
    ],
    cautions: ['blade', 'tools', 'saw', 'ladder', 'sap', 'hotWax'],
  },
  {
    method: 'four_flap_graft',
    pictured: 'flapStock',
    summary:
      'Bark of the stock peeled down in four flaps, wood taken out, a four-sided scion set in and the flaps drawn up.',
    goodFor: 'Pecan and other nuts, thumb thick, when other grafts bleed or miss.',
    notFor: 'Thin or very thick stems, bark that does not slip, large numbers.',
    needs: {
      tools: ['Knife', 'Secateurs', 'Rubber band', 'Foil and clear bag', 'Soft tie', 'Labels'],
      wood: 'Scion at rest, straight, as thick as the stock or a little thinner.',
      stock: 'Straight stem or limb, bark slipping.',
      season: 'Spring, bark slipping, before great heat.',
    },
    steps: [
      step(
        'flapStock',
        'Top the stock, slit the bark four times, peel four flaps down, cut the bare wood out.',
        'Flaps whole and of one width; only fresh wet insides.',
        'A torn flap is a side that does not take.',
      ),
      step(
        'flapScion',
        'Cut four flat faces at the foot of the scion, a strip of bark left at each corner.',
        'Faces just through to the wood; corners keep a line of green.',
        'Cambium shows along eight edges: that is why this graft takes.',
      ),
      step(
        'flapSet',
        'Set the scion on the wood of the stock and draw the flaps up over the faces; band them.',
        'Each flap covers its face, edges meet the corner strips.',
        'Inside of flap is cambium: laid on the face it joins along both sides at once.',
      ),
      step(
        'flapWrapped',
        'Foil round, bag with its corner off over it, tie above and below; seal the tip; label.',
        'Foil shiny side out; bag closed round the scion.',
        'Foil keeps it cool, the bag moist: bare flaps dry in an hour of wind.',
      ),
    ],
    measures: [usual('length of the flaps', 'mm', 50, 65, 80), usual('stock thickness', 'mm', 10, 18, 30)],
    failures: [
      fails('Flaps black', 'rain got in', 'stock bled: leave a nurse limb or top earlier'),
      fails('One side open', 'flap narrower than its face', 'band slipped'),
      fails('Broken by birds or wind', 'no perch stick or splint beside it'),
    ],
    aftercare: [
      weeks(0, 4, 'Leave shut. Stock shoots: shorten, do not strip.'),
      weeks(4, 8, 'Buds push: open the bag; keep the foil while it is hot.'),
      weeks(8, 16, 'Cut band and ties; splint the shoot; pinch.'),
      weeks(16, 40, 'Stock shoots off by steps.'),
    ],
    cautions: ['blade', 'tools', 'ladder', 'heat'],
  },
  {
    method: 'approach_graft',
    pictured: 'twoJoined',
    summary: 'Two plants joined while both stand on their own roots; then cut apart in steps.',
    goodFor: 'Hard cases: sapodilla, jackfruit, mango, longan; new roots for a weak tree.',
    notFor: 'Numbers: a graft an hour or so of ladder work, months on the mother.',
    needs: {
      tools: ['Knife', 'Strong tape', 'Stage or hanger for the pot', 'Water every day for the pot', 'Labels'],
      wood: 'Branch on the mother, as thick as the stock, in growth.',
      stock: 'Potted seedling that can be brought to the branch.',
      season: 'Active growth of both.',
    },
    steps: [
      step(
        'twoPlants',
        'Bring the potted stock up to the branch and fix it so that it cannot swing.',
        'Stems run side by side without strain; the pot can be watered.',
        'Each gust that moves the pot tears the callus.',
      ),
      step(
        'twoFaces',
        'Slice a strip of equal length and width from both, at the same height.',
        'Through the bark and just into the wood; green line all round both faces.',
        'Equal faces put every edge of cambium upon its like.',
      ),
      step(
        'twoJoined',
        'Press face to face and tie from end to end.',
        'Lines meet on both sides, or wholly on one; no light between.',
        'Both live on their own roots meanwhile: there is time, but only for cambium that touches.',
      ),
      step(
        'twoSevered',
        'When joined, cut in steps: half through the scion below, the stock’s top above, then each wholly.',
        'Wait two weeks between cuts; leaves must stay firm.',
        'Cut at once, the new joint must carry everything on its first day.',
      ),
    ],
    measures: [
      usual('thickness of both stems', 'mm', 6, 10, 20),
      usual('length of the face', 'mm', 40, 60, 80),
    ],
    failures: [
      fails('Pot dry, stock dead', 'watering forgotten: hang a list on the tree'),
      fails('Faces callused but apart', 'tie slack', 'swinging in wind'),
      fails('Scion wilts after cutting', 'cut in one go', 'too much leaf left'),
    ],
    aftercare: [
      weeks(0, 8, 'Water the pot daily; look at the tie weekly.'),
      weeks(8, 12, 'First half cuts; shade.'),
      weeks(12, 15, 'Second cuts; take down; deep shade.'),
      weeks(15, 24, 'Tie off; stock shoots off; sun by steps.'),
    ],
    cautions: ['blade', 'tools', 'ladder', 'sap', 'lifting'],
  },
]
