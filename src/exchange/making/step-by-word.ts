import { foldName, type PlaceKind, type Protocol, type Sign } from '../../trade/index.ts'
import { placeByWord } from '../words/trade-words.ts'

type Step = Protocol['steps'][number]

/** Words for stages, and what of a step they mean. Several languages, from memory. */
const stages: readonly (readonly [words: string, fits: (step: Step) => boolean])[] = [
  [
    'rooting, stuck, sticking, in mist, callusing, striking, cuttings, bewurzelung, gesteckt, enracinement, enraizamiento, radicazione, beworteling',
    step => hasSign(step, 'rooted'),
  ],
  [
    'germinating, sown, germination, seed tray, keimung, ausgesat, germination, germinacion, germinazione, kieming',
    step => hasSign(step, 'germinated'),
  ],
  [
    'healing, grafted, budded, taking, callus, veredelt, okuliert, greffe, injertado, innestato, geent',
    step => hasSign(step, 'united'),
  ],
  [
    'on the mother, on mother, ringed, wrapped, layered, am mutterbaum, sur pied mere',
    step => step.place === 'mother block',
  ],
  [
    'weaning, hardening, hardening off, weaned, abhartung, sevrage, aclimatacion, acclimatazione',
    step => /wean/i.test(step.id),
  ],
  ['pricked out, pricked, pikiert, repique, repicado', step => /prick/i.test(step.id)],
]
const finishedWords =
  'finished, ready, saleable, for sale, sale, done, fertig, verkaufsfahig, vendable, fini, terminado, venta, pronto, vendibile, verkoopbaar, klaar'
const growingWords =
  'growing on, growing, potted, potted on, pot, liner, growing out, wachstum, weiterkultur, getopft, elevage, rempote, crecimiento, crescita, opkweek'
const growing: ReadonlySet<PlaceKind> = new Set<PlaceKind>([
  'shade house',
  'tunnel',
  'standing ground',
  'field row',
])

const hasSign = (step: Step, sign: Sign): boolean => step.sign === sign
const isIn = (words: string, folded: string): boolean =>
  words.split(', ').some(word => foldName(word) === folded)

/** The step that a stage means, by the protocol's own names first: its index, the number of steps for finished plants. */
export function stepByWord(said: string, steps: readonly Step[]): number | undefined {
  const folded = foldName(said)
  const own = steps.findIndex(({ id, name }) => foldName(id) === folded || foldName(name) === folded)
  if (own >= 0) return own
  if (isIn(finishedWords, folded)) return steps.length
  if (isIn(growingWords, folded)) {
    const last = steps.findLastIndex(({ place }) => growing.has(place))
    return last >= 0 ? last : undefined
  }
  for (const [words, fits] of stages) {
    if (!isIn(words, folded)) continue
    const at = steps.findIndex(fits)
    if (at >= 0) return at
  }
  const place = placeByWord(said)
  const there = steps.findIndex(step => step.place === place)
  return there < 0 ? undefined : there
}
