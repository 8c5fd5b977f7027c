import { summerBudsticks } from '../facts/general/keeping-wood.ts'
import { fails, known, step, usual, weeks } from './draft.ts'
import type { Guide } from './guide.ts'

const budsticksKeep = known('summer budsticks keep', 'days', summerBudsticks.days)

export const budGuides: readonly Guide[] = [
  {
    method: 't_bud',
    pictured: 'tSeated',
    summary: 'One bud on a shield, slid under the bark of a T: quick, and it wastes no wood.',
    goodFor:
      'Citrus, apple, pear, peach, plum, cherry, loquat: many trees from little budwood, in the row or in pots.',
    notFor: 'Weeks when the bark does not slip, and thick or corky bark.',
    needs: {
      tools: [
        'Budding knife, razor sharp, with a lifter',
        'Tape or rubber ties',
        'Wet cloth for budsticks',
        'Disinfectant',
        'Labels',
      ],
      wood: 'Ripe buds of this season; leaf blades cut off at once, stubs left; stick kept wet and cool, right way up.',
      stock: 'Pencil-thick stem, bark slipping, smooth side away from the midday sun.',
      season: 'Bark slips: late spring for a push this year, late summer for a sleeping bud.',
    },
    steps: [
      step(
        'budStick',
        'Cut the shield from below the bud to above it, thin, in one stroke; lift it by the stub.',
        'A thin sliver of wood behind the bud at most; bud not hollow from behind.',
        'A hollow behind the bud means that its core stayed on the stick: it will never grow.',
      ),
      step(
        'tCut',
        'Cut the bar and then the foot of the T, just through the bark; lift the corners.',
        'Bark opens like wet paper; wood shining, not scored.',
        'If it must be forced, the cambium tears: wait, or chip.',
      ),
      step(
        'tSlid',
        'Slide the shield down under the flaps, bud up.',
        'Held by the stub, face never touched; eye up as it grew.',
        'Upside down it may take, but grows with a crook.',
      ),
      step(
        'tSeated',
        'Push until the bud stands well below the bar; trim the shield’s top flush with the bar.',
        'Base of the bud below the lip; shield’s top edge against the bar’s edge.',
        'There cambium meets cambium end to end; an overlap keeps the flaps open.',
      ),
      step(
        'tTied',
        'Tie from below up, bud free (or film over it), label the row.',
        'Flaps shut, no turn on the bud, no gap at the bar.',
        'Rain runs in at the bar: that turn must be tight. Tight from below keeps the shield from riding up.',
      ),
      step(
        'budForced',
        'When the bud has taken, slit the tie; cut or bend the stock above it; rub off all others.',
        'Stub drops at a touch and the shield is green: taken. Cut slopes away behind the bud.',
        'A leaf stalk that dries on shows a dead bud: work the other side while bark slips.',
      ),
    ],
    measures: [
      usual('stock stem at the bud', 'mm', 6, 9, 15),
      usual('length of the shield', 'mm', 20, 30, 40),
      budsticksKeep,
    ],
    failures: [
      fails('Stub shrivels and sticks', 'bud dried before tying', 'heat', 'bark did not slip'),
      fails('Shield black', 'rain in at the bar', 'dirty blade', 'tied too late'),
      fails('Green, but never pushes', 'stock not headed back', 'blind bud', 'tie left on'),
      fails('Pushes in autumn and freezes', 'budded too early', 'stock fed too late'),
    ],
    aftercare: [
      weeks(0, 2, 'Water the stocks, no pruning. Re-bud what failed while bark slips.'),
      weeks(2, 4, 'Check takes, slit ties opposite the bud.'),
      weeks(4, 8, 'Forcing now: cut or bend above the bud. Sleeping bud: leave until late winter.'),
      weeks(8, 30, 'Stake, tie the shoot straight, rub off stock shoots each week.'),
    ],
    cautions: ['blade', 'tools', 'sap', 'heat'],
  },
  {
    method: 'chip_bud',
    pictured: 'chipFit',
    summary: 'A bud with its chip of wood set into a notch of the same shape; the bark need not slip.',
    goodFor:
      'Apple, pear, plum, cherry, citrus, persimmon, walnut: a longer season than the T, and strong unions.',
    notFor: 'Stocks much thinner than the budstick; hot dry days without film.',
    needs: {
      tools: ['Single-bevel knife', 'Thin stretch film', 'Wet cloth', 'Disinfectant', 'Labels'],
      wood: 'Ripe buds, of this season in late summer or of last season’s rest in spring; as thick as the stock.',
      stock: 'Smooth young stem.',
      season: 'Late summer, or spring before growth; whenever buds are ripe.',
    },
    steps: [
      step(
        'chipStock',
        'Cut in and down a little way, then start above and slice down to meet that cut; take the piece out.',
        'Shallow, flat, with a lip at the bottom that slopes down and in.',
        'The lip holds the chip’s foot while you tie, and adds cambium there.',
      ),
      step(
        'chipBud',
        'Cut the bud out of the stick with the same two strokes.',
        'Same length, same width, bud in the middle, tip up.',
        'Same strokes give the same shape: that is the whole skill.',
      ),
      step(
        'chipFit',
        'Drop the chip behind the lip.',
        'Green line round both sides and under the arch; nothing stands proud.',
        'Cambium must meet along the sides; the lip alone does not feed a bud.',
      ),
      step(
        'chipOneSide',
        'If the chip is narrower, move it to one side.',
        'One whole side matched, the foot still in the lip.',
        'Centred, it meets nowhere.',
      ),
      step(
        'chipTied',
        'Wrap from below up with film, over everything; leave the bud free only if it is fat.',
        'Airtight, no fold of film open at the top; label.',
        'A chip has no flap over it: film is its only bark until it joins.',
      ),
      step(
        'budForced',
        'Open when callus rims the chip; cut the stock above; rub off all others.',
        'White rim all round; chip does not move under the thumb.',
        'Opened early it dries; left on, the film strangles a growing bud.',
      ),
    ],
    measures: [
      usual('stock stem at the bud', 'mm', 6, 10, 16),
      usual('length of the chip', 'mm', 25, 32, 40),
      budsticksKeep,
    ],
    failures: [
      fails('Chip shrivels', 'film leaked', 'chip thinner than the notch is deep'),
      fails('Takes at the foot only', 'narrow chip centred', 'wavy cut'),
      fails('Pushes under the film and bends', 'opened too late'),
      fails('Stays asleep', 'stock not headed', 'flower bud used'),
    ],
    aftercare: [
      weeks(0, 3, 'Leave shut; water; no pruning.'),
      weeks(3, 5, 'Rim of callus all round: open the film.'),
      weeks(5, 8, 'Force, or leave asleep until late winter.'),
      weeks(8, 30, 'Stake, train straight, rub off stock shoots.'),
    ],
    cautions: ['blade', 'tools', 'sap', 'heat'],
  },
  {
    method: 'patch_bud',
    pictured: 'patchFit',
    summary: 'A square of bark with its bud set into a window of the same size.',
    goodFor: 'Walnut, pecan, cacao, jackfruit and others with thick bark or latex.',
    notFor: 'Thin stems, and any week when bark sticks on either side.',
    needs: {
      tools: ['Double-bladed knife or two blades on a block', 'Tape', 'Cloth for latex', 'Labels'],
      wood: 'Budstick as thick as the stock, bark slipping, leaf stalks dropped or dropped by cutting blades some weeks before.',
      stock: 'Stem from thick pencil up to a broom handle, bark slipping.',
      season: 'Full growth, bark slipping on both.',
    },
    steps: [
      step(
        'patchStock',
        'Mark the window with the double blade and cut its sides; fold the bark down or lift it off.',
        'Through the bark, not into the wood; window clean and wet.',
        'The wet face is cambium: do not touch, scrape or let it dry.',
      ),
      step(
        'patchTaken',
        'Cut the same window round the bud and push the patch off sideways.',
        'Bud’s core comes with it: no hole behind the bud.',
        'Pulled straight out, the core stays on the stick, and the bud is blind.',
      ),
      step(
        'patchFit',
        'Lay it in at once, bud up; trim the flap to cover its foot.',
        'Top and bottom edges touch without a gap; sides touch on one at least.',
        'The patch joins at its edges and face: a gap at the top lets rain in, a gap below lets it drain dry.',
      ),
      step(
        'patchTied',
        'Tie firmly above and below, bud free; label.',
        'Pressed flat everywhere; edges covered.',
        'A patch that bulges in the middle has air behind it.',
      ),
      step(
        'budForced',
        'Open when it has joined; lop or cut the stock above; rub off all others.',
        'Scratch the patch: green. Callus along the edges.',
        'Sleeping patches wake only when the flow above is cut.',
      ),
    ],
    measures: [
      usual('stock stem at the patch', 'mm', 10, 20, 40),
      usual('height of the patch', 'mm', 25, 30, 40),
    ],
    failures: [
      fails('Patch black', 'latex or water behind it', 'cambium dried: too slow'),
      fails('Patch green, bud dead', 'core left on the stick'),
      fails(
        'Lifts at the edges',
        'patch smaller than the window',
        'tied too loose',
        'stock bark thicker: pad under the tie',
      ),
    ],
    aftercare: [
      weeks(0, 2, 'Leave shut; keep stocks growing.'),
      weeks(2, 4, 'Open the tie; count green patches after a week.'),
      weeks(4, 8, 'Lop above the patch; shoots off weekly.'),
      weeks(8, 30, 'Stake; take the snag off when the shoot has hardened.'),
    ],
    cautions: ['blade', 'tools', 'sap', 'heat'],
  },
]
