import { inEnglish, type Part, type Phrase, phrase } from '../trade/index.ts'

/** What a query has to tell: its words name these. */
type Facts = Readonly<Record<string, string | number>>
/** The same as parts of a phrase, and numbers with their noun. */
type Parts = Readonly<Record<string, Part>>

/** Facts that are days, and those that are words of the language. */
const days = new Set(['on', 'startedOn', 'retiredOn', 'collectedOn', 'goodUntil', 'since'])

const plants = (number: string | number | undefined): Phrase =>
  number === undefined
    ? phrase('some plants')
    : number === 1
      ? phrase('1 plant')
      : phrase('{number} plants', { number })

function partsOf({ did, material, ...facts }: Facts): Parts {
  const parts: Parts = {
    ...Object.fromEntries(
      Object.entries(facts).map(([name, fact]): [string, Part] => [
        name,
        days.has(name) ? { day: String(fact) } : fact,
      ]),
    ),
    plants: plants(facts.number),
    askedPlants: plants(facts.asked),
    ...(material === undefined ? {} : { material: phrase(String(material)) }),
  }
  return did === undefined ? parts : { ...parts, did: phrase(String(did), parts) }
}

const moreFound = (parts: Parts): Part =>
  Number(parts.found) > 0 ? phrase(', and {found} are more than the whole batch had', parts) : ''

const things = {
  batch: 'batch {name}',
  mother: 'mother tree {name}',
  lot: 'the material {name}',
} as const

/** What each kind of query says and what to do about it, in one sentence. */
const words = {
  'unknown-batch': parts =>
    phrase(
      'An entry ({says}) speaks of batch {batch}, which no entry has started: enter its start, or strike the entry.',
      parts,
    ),
  'started-twice': parts =>
    phrase(
      'Batch {batch} was started a second time: its {plants} are put with the first, so strike one start, or give the second its own number.',
      parts,
    ),
  'before-start': parts =>
    phrase(
      'An entry of {on} ({says}) is dated before batch {batch} began on {startedOn}: it counts from that day, so correct the date that is wrong.',
      parts,
    ),
  'unknown-protocol': parts =>
    phrase(
      'Batch {batch} follows the protocol {protocol}, which is not written down: enter the protocol.',
      parts,
    ),
  'unknown-kind': parts =>
    phrase('Batch {batch} is of kind {kind}, which is not entered: enter the kind of tree.', parts),
  'unknown-step': parts =>
    phrase(
      'The protocol of batch {batch} has no step "{step}": strike the entry and name one of its steps, or add the step to the protocol.',
      parts,
    ),
  'unknown-bench': parts =>
    phrase('Plants of batch {batch} went to bench {bench}, which is not entered: enter the bench.', parts),
  'bench-removed': parts =>
    phrase(
      '{plants} of batch {batch} still stand on bench {bench}, which was removed: enter where they were moved to.',
      parts,
    ),
  'count-does-not-close': parts =>
    phrase(
      Number(parts.difference) > 0
        ? 'Batch {batch}, {step}: the record had {stood}, the count found {taken} taken, {dead} dead and {undecided} not yet to tell, which is {off} more; the count stands, so enter the move or loss that was not written down.'
        : 'Batch {batch}, {step}: the record had {stood}, the count found {taken} taken, {dead} dead and {undecided} not yet to tell, which is {off} fewer; the count stands, so enter the move or loss that was not written down.',
      { ...parts, off: Math.abs(Number(parts.difference)) },
    ),
  'bench-count-does-not-close': parts =>
    phrase(
      'Batch {batch}, {step}: on bench {bench} the record had {stood}, and {counted} were counted against {said} that it was said to have; the count stands, so enter the move or loss that was not written down.',
      parts,
    ),
  'more-than-stood': parts =>
    phrase(
      'Batch {batch}, {step}: {askedPlants} {did}, but only {stood} stood there{others}{more}: count the batch, or strike the entry that is wrong.',
      {
        ...parts,
        others:
          Number(parts.elsewhere) > 0 ? phrase(', so {elsewhere} were taken from other steps', parts) : '',
        more: moreFound(parts),
      },
    ),
  'not-finished-yet': parts =>
    phrase(
      'Batch {batch}: {askedPlants} {did}, but only {finished} were entered as finished{more}: enter the finishing, or count the batch.',
      { ...parts, more: moreFound(parts) },
    ),
  'into-itself': parts =>
    phrase(
      'Batch {batch} was {did} into itself, which changes nothing: strike the entry and name the other batch.',
      parts,
    ),
  'same-step': parts =>
    phrase(
      'Batch {batch} was advanced from "{step}" to the same step, which changes nothing but the bench: strike the entry if another step was meant.',
      parts,
    ),
  'kinds-mixed': parts =>
    phrase(
      '{plants} of {other} were joined to batch {batch} of {kind}: split them again, or enter under which names the batch may go.',
      parts,
    ),
  'reworked-in-part': parts =>
    phrase(
      'Only {number} of the {alive} plants of batch {batch} were worked over: split those off so that each keeps its right name.',
      parts,
    ),
  'grades-do-not-close': parts =>
    phrase(
      'Batch {batch}, {step}: {graded} were graded, but {stood} stand there: count them, or correct the grades.',
      parts,
    ),
  'returned-more': parts =>
    phrase(
      '{returned} of batch {batch} came back, but only {dispatched} had gone out: check which batch they are.',
      parts,
    ),
  'name-not-among-candidates': parts =>
    phrase(
      'Batch {batch} was settled as {cultivar}, which was not among the names it might have: check the finding.',
      parts,
    ),
  'rootstocks-do-not-match': parts =>
    phrase(
      'Batch {batch} began with {number} worked plants, but {rootstocks} rootstocks are named for it: correct the number, or name the other rootstocks.',
      parts,
    ),
  'wrong-wood': parts =>
    phrase(
      'Batch {batch} is to be {wanted}, but wood of {got} went into it ({from}): put it on hold until the name is sure, then correct the kind or the source.',
      parts,
    ),
  'unknown-person': parts =>
    phrase(
      Number(parts.number) === 1
        ? 'An entry names {person}, who is not entered among the people: enter the person, or strike what was said under a wrong name.'
        : '{number} entries name {person}, who is not entered among the people: enter the person, or strike what was said under a wrong name.',
      parts,
    ),
  'unknown-mother': parts =>
    phrase(
      'An entry ({says}) names the mother tree {mother}, which is not entered: enter the tree, or strike the entry.',
      parts,
    ),
  'no-growth-stage': parts =>
    phrase(
      'Mother tree {mother} was seen at growth stage "{says}", which is no BBCH code: strike the entry, and say the stage in two figures.',
      parts,
    ),
  'mother-over-supply': parts =>
    phrase(
      'Mother tree {mother} gave {given} {material} in the season of {season}, and {mayGive} is what it may give without harm: spare it, or correct what it may give.',
      parts,
    ),
  'mother-retired': parts =>
    phrase(
      'Mother tree {mother} gave {material} on {on}, after it was retired on {retiredOn}: check which tree they are from.',
      parts,
    ),
  'unknown-lot': parts =>
    phrase(
      'An entry ({says}) uses the material {lot}, which no entry has collected: enter where it was cut, or strike the entry.',
      parts,
    ),
  'lot-collected-twice': parts =>
    phrase(
      'The material {lot} was collected a second time, and only the first counts: give the second lot its own number.',
      parts,
    ),
  'lot-used-twice': parts =>
    phrase(
      'Of the material {lot}, {number} were collected and {used} used or thrown away, so some were counted twice: correct one of the entries.',
      parts,
    ),
  'lot-past-keeping': parts =>
    phrase(
      'The material {lot} was used on {on}, after {goodUntil} when it should have been used up: watch the take, or correct the date.',
      parts,
    ),
  'lot-before-collecting': parts =>
    phrase(
      'The material {lot} was used on {on}, before it was collected on {collectedOn}: correct the date that is wrong.',
      parts,
    ),
  'unknown-order': parts =>
    phrase(
      'An entry ({says}) names the order {order}, which is not entered: enter the order, or strike the entry.',
      parts,
    ),
  'order-overfilled': parts =>
    phrase(
      'Order {order} asks for {number}, and {dispatched} have gone out: check the last dispatch, or change the order.',
      parts,
    ),
  'order-cancelled': parts =>
    phrase(
      '{plants} went out for order {order} after it was cancelled: call them back, or place the order again.',
      parts,
    ),
  'not-what-was-ordered': parts =>
    phrase(
      '{plants} of {kind} (batch {batch}) went out for order {order}, which asks for {wanted}: tell the buyer, or correct the entry.',
      parts,
    ),
  'hold-broken': parts =>
    phrase(
      '{Thing} {did} on {on}, while a hold of {since} stood ({why}): find them, keep them apart, and enter what was done.',
      { ...parts, thing: phrase(things[parts.what as keyof typeof things], parts) },
    ),
  'unknown-hold': parts =>
    phrase(
      'An entry releases a hold that is not in the record ({hold}): strike it, or place the hold.',
      parts,
    ),
  'strikes-nothing': parts =>
    phrase(
      'An entry strikes another that has not arrived ({entry}): let every phone send what it holds.',
      parts,
    ),
  'strikes-later-strike': parts =>
    phrase(
      'An entry strikes a striking that is not older than itself ({entry}), so it has no effect: strike the right entry.',
      parts,
    ),
  'not-understood': parts =>
    phrase(
      'An entry says "{says}", which only a newer version of the program understands: it is kept and counts after the update.',
      parts,
    ),
} as const satisfies Record<string, (parts: Parts) => Phrase>

export type QueryKind = keyof typeof words

/** All kinds of query, in the order in which they are listed for people. */
export const queryKinds = Object.keys(words) as readonly QueryKind[]

interface Asked {
  readonly kind: QueryKind
  readonly facts: Facts
}

/** One sentence: what does not add up, and what to do. */
export const queryPhrase = ({ kind, facts }: Asked): Phrase => words[kind](partsOf(facts))

export const queryText = (query: Asked): string => inEnglish(queryPhrase(query))
