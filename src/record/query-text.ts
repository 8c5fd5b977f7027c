/** What a query has to tell: its words name these. */
type Facts = Readonly<Record<string, string | number>>
type Words = (facts: Facts) => string

const plants = (number: string | number | undefined): string =>
  number === 1 ? '1 plant' : `${number ?? 'some'} plants`

/** What each kind of query says and what to do about it, in one sentence. */
const words = {
  'unknown-batch': f =>
    `An entry (${f.says}) speaks of batch ${f.batch}, which no entry has started: enter its start, or strike the entry.`,
  'started-twice': f =>
    `Batch ${f.batch} was started a second time: its ${plants(f.number)} are put with the first, so strike one start, or give the second its own number.`,
  'before-start': f =>
    `An entry of ${f.on} (${f.says}) is dated before batch ${f.batch} began on ${f.startedOn}: it counts from that day, so correct the date that is wrong.`,
  'unknown-protocol': f =>
    `Batch ${f.batch} follows the protocol ${f.protocol}, which is not written down: enter the protocol.`,
  'unknown-kind': f => `Batch ${f.batch} is of kind ${f.kind}, which is not entered: enter the kind of tree.`,
  'unknown-step': f =>
    `The protocol of batch ${f.batch} has no step "${f.step}": strike the entry and name one of its steps, or add the step to the protocol.`,
  'unknown-bench': f =>
    `Plants of batch ${f.batch} went to bench ${f.bench}, which is not entered: enter the bench.`,
  'bench-removed': f =>
    `${plants(f.number)} of batch ${f.batch} still stand on bench ${f.bench}, which was removed: enter where they were moved to.`,
  'count-does-not-close': f =>
    `Batch ${f.batch}, ${f.step}: the record had ${f.stood}, the count found ${f.taken} taken, ${f.dead} dead and ${f.undecided} not yet to tell, which is ${Math.abs(Number(f.difference))} ${Number(f.difference) > 0 ? 'more' : 'fewer'}; the count stands, so enter the move or loss that was not written down.`,
  'bench-count-does-not-close': f =>
    `Batch ${f.batch}, ${f.step}: on bench ${f.bench} the record had ${f.stood}, and ${f.counted} were counted against ${f.said} that it was said to have; the count stands, so enter the move or loss that was not written down.`,
  'more-than-stood': f =>
    `Batch ${f.batch}, ${f.step}: ${plants(f.asked)} ${f.did}, but only ${f.stood} stood there${Number(f.elsewhere) > 0 ? `, so ${f.elsewhere} were taken from other steps` : ''}${Number(f.found) > 0 ? `, and ${f.found} are more than the whole batch had` : ''}: count the batch, or strike the entry that is wrong.`,
  'not-finished-yet': f =>
    `Batch ${f.batch}: ${plants(f.asked)} ${f.did}, but only ${f.finished} were entered as finished${Number(f.found) > 0 ? `, and ${f.found} are more than the whole batch had` : ''}: enter the finishing, or count the batch.`,
  'into-itself': f =>
    `Batch ${f.batch} was ${f.did} into itself, which changes nothing: strike the entry and name the other batch.`,
  'same-step': f =>
    `Batch ${f.batch} was advanced from "${f.step}" to the same step, which changes nothing but the bench: strike the entry if another step was meant.`,
  'kinds-mixed': f =>
    `${plants(f.number)} of ${f.other} were joined to batch ${f.batch} of ${f.kind}: split them again, or enter under which names the batch may go.`,
  'reworked-in-part': f =>
    `Only ${f.number} of the ${f.alive} plants of batch ${f.batch} were worked over: split those off so that each keeps its right name.`,
  'grades-do-not-close': f =>
    `Batch ${f.batch}, ${f.step}: ${f.graded} were graded, but ${f.stood} stand there: count them, or correct the grades.`,
  'returned-more': f =>
    `${f.returned} of batch ${f.batch} came back, but only ${f.dispatched} had gone out: check which batch they are.`,
  'name-not-among-candidates': f =>
    `Batch ${f.batch} was settled as ${f.cultivar}, which was not among the names it might have: check the finding.`,
  'rootstocks-do-not-match': f =>
    `Batch ${f.batch} began with ${f.number} worked plants, but ${f.rootstocks} rootstocks are named for it: correct the number, or name the other rootstocks.`,
  'wrong-wood': f =>
    `Batch ${f.batch} is to be ${f.wanted}, but wood of ${f.got} went into it (${f.from}): put it on hold until the name is sure, then correct the kind or the source.`,
  'unknown-person': f =>
    `${Number(f.number) === 1 ? 'An entry names' : `${f.number} entries name`} ${f.person}, who is not entered among the people: enter the person, or strike what was said under a wrong name.`,
  'unknown-mother': f =>
    `An entry (${f.says}) names the mother tree ${f.mother}, which is not entered: enter the tree, or strike the entry.`,
  'no-growth-stage': f =>
    `Mother tree ${f.mother} was seen at growth stage "${f.says}", which is no BBCH code: strike the entry, and say the stage in two figures.`,
  'mother-over-supply': f =>
    `Mother tree ${f.mother} gave ${f.given} ${f.material} in the season of ${f.season}, and ${f.mayGive} is what it may give without harm: spare it, or correct what it may give.`,
  'mother-retired': f =>
    `Mother tree ${f.mother} gave ${f.material} on ${f.on}, after it was retired on ${f.retiredOn}: check which tree they are from.`,
  'unknown-lot': f =>
    `An entry (${f.says}) uses the material ${f.lot}, which no entry has collected: enter where it was cut, or strike the entry.`,
  'lot-collected-twice': f =>
    `The material ${f.lot} was collected a second time, and only the first counts: give the second lot its own number.`,
  'lot-used-twice': f =>
    `Of the material ${f.lot}, ${f.number} were collected and ${f.used} used or thrown away, so some were counted twice: correct one of the entries.`,
  'lot-past-keeping': f =>
    `The material ${f.lot} was used on ${f.on}, after ${f.goodUntil} when it should have been used up: watch the take, or correct the date.`,
  'lot-before-collecting': f =>
    `The material ${f.lot} was used on ${f.on}, before it was collected on ${f.collectedOn}: correct the date that is wrong.`,
  'unknown-order': f =>
    `An entry (${f.says}) names the order ${f.order}, which is not entered: enter the order, or strike the entry.`,
  'order-overfilled': f =>
    `Order ${f.order} asks for ${f.number}, and ${f.dispatched} have gone out: check the last dispatch, or change the order.`,
  'order-cancelled': f =>
    `${plants(f.number)} went out for order ${f.order} after it was cancelled: call them back, or place the order again.`,
  'not-what-was-ordered': f =>
    `${plants(f.number)} of ${f.kind} (batch ${f.batch}) went out for order ${f.order}, which asks for ${f.wanted}: tell the buyer, or correct the entry.`,
  'hold-broken': f =>
    `${f.what} ${f.did} on ${f.on}, while a hold of ${f.since} stood (${f.why}): find them, keep them apart, and enter what was done.`,
  'unknown-hold': f =>
    `An entry releases a hold that is not in the record (${f.hold}): strike it, or place the hold.`,
  'strikes-nothing': f =>
    `An entry strikes another that has not arrived (${f.entry}): let every phone send what it holds.`,
  'strikes-later-strike': f =>
    `An entry strikes a striking that is not older than itself (${f.entry}), so it has no effect: strike the right entry.`,
  'not-understood': f =>
    `An entry says "${f.says}", which only a newer version of the program understands: it is kept and counts after the update.`,
} as const satisfies Record<string, Words>

export type QueryKind = keyof typeof words

/** All kinds of query, in the order in which they are listed for people. */
export const queryKinds = Object.keys(words) as readonly QueryKind[]

/** One sentence: what does not add up, and what to do. */
export const queryText = (query: { readonly kind: QueryKind; readonly facts: Facts }): string =>
  words[query.kind](query.facts)
