import { type FactSaid, inEnglish, measureOf, type Part, type Phrase, phrase } from '../trade/index.ts'
import type { AnyEntry, Body, Source } from './entry.ts'
import { heldId } from './fold/subjects.ts'

type ById<T> = ReadonlyMap<string, T>
interface Named {
  readonly name: string
}
interface Stepped extends Named {
  readonly steps: readonly (Named & { readonly id: string })[]
}

/** What an entry may speak of, by id: a nursery is one; what is not in it is called by its id. */
export interface EntryNames {
  readonly batches: ById<Named & { readonly protocol: string }>
  readonly mothers: ById<{ readonly mother: Named }>
  readonly protocols: ById<Stepped>
  readonly cultivars: ById<Named>
  readonly kinds: ById<Named>
  readonly benches: ById<Named>
  readonly people: ById<Named>
  readonly former: {
    readonly kinds: ById<Named>
    readonly benches: ById<Named>
    readonly people: ById<Named>
  }
}

/** Looks an id up that is text here, whatever it names. */
const at = <T>(map: ReadonlyMap<string, T>, id: string): T | undefined => map.get(id)

const stepOf = (protocol: Stepped | undefined, step: string): Phrase =>
  phrase(protocol?.steps.find(({ id }) => id === step)?.name ?? step)

/** What an entry says, in one line for people. Things are called by the names that they have now. */
export const entryText = (body: AnyEntry['body'], names: EntryNames): string =>
  inEnglish(entryPhrase(body, names))

export function entryPhrase(body: AnyEntry['body'], names: EntryNames): Phrase {
  const batch = (id: string) => at(names.batches, id)?.name ?? id
  const mother = (id: string) => at(names.mothers, id)?.mother.name ?? id
  const kind = (id: string) => (at(names.kinds, id) ?? at(names.former.kinds, id))?.name ?? id
  const bench = (id: string) => (at(names.benches, id) ?? at(names.former.benches, id))?.name ?? id
  const person = (id: string) => (at(names.people, id) ?? at(names.former.people, id))?.name ?? id
  const cultivar = (id: string) => at(names.cultivars, id)?.name ?? id
  const stepName = (ofBatch: string, step: string): Phrase =>
    stepOf(at(names.protocols, at(names.batches, ofBatch)?.protocol ?? ''), step)
  const because = (why: string): Part => (why === '' ? '' : phrase(' ({why})', { why }))
  const onBench = (id: string | null): Part =>
    id === null ? '' : phrase(', on {bench}', { bench: bench(id) })
  const forOrder = (id: string | null): Part =>
    id === null ? '' : phrase(' for order {order}', { order: id })
  const sourcePhrase = (source: Source): Phrase => {
    const { number } = source
    switch (source.from) {
      case 'mother':
        return phrase('{number} {material} of {mother}', {
          number,
          material: phrase(source.material),
          mother: mother(source.mother),
        })
      case 'lot':
        return phrase('{number} of material {lot}', { number, lot: source.lot })
      case 'batch':
        return phrase('{number} of batch {batch} as {as}', {
          number,
          batch: batch(source.batch),
          as: phrase(source.as),
        })
      case 'bought':
        return phrase('{number} {material} from {supplier}', {
          number,
          material: phrase(source.material),
          supplier: source.supplier,
        })
    }
  }
  const from = (sources: readonly Source[]): Part =>
    sources.length === 0 ? '' : phrase(', from {sources}', { sources: sources.map(sourcePhrase) })

  const said = body as Body
  switch (said.kind) {
    case 'site-set/1':
      return phrase('Site: {name}', { name: said.site.name })
    case 'bench-set/1':
      return phrase('Bench {name}: {place}, {area}', {
        name: said.bench.name,
        place: phrase(said.bench.place),
        area: { amount: said.bench.areaSquareMetres, unit: 'm²' },
      })
    case 'bench-removed/1':
      return phrase('Bench {bench} removed{because}', {
        bench: bench(said.bench),
        because: because(said.why),
      })
    case 'person-set/1':
      return phrase('{name}: {hours} hours a week', {
        name: said.person.name,
        hours: said.person.hoursPerWeek,
      })
    case 'person-left/1':
      return phrase('{person} left', { person: person(said.person) })
    case 'cultivar-set/1':
      return phrase('Cultivar {name}', { name: said.cultivar.name })
    case 'kind-set/1':
      return phrase('Kind of tree: {name}', { name: said.kindOfTree.name })
    case 'kind-dropped/1':
      return phrase('{kind} made no more{because}', {
        kind: kind(said.kindOfTree),
        because: because(said.why),
      })
    case 'protocol-set/1':
      return phrase('Protocol {name}, version {version}', {
        name: said.protocol.name,
        version: said.protocol.version,
      })
    case 'prices-set/1':
      return phrase('Prices set')
    case 'settings-set/1':
      return phrase('Settings set')
    case 'rate-set/1': {
      const protocol = at(names.protocols, said.protocol)
      return phrase('{what}: survival in “{step}” set to {share} %{because}', {
        what: said.kindOfTree === null ? phrase(protocol?.name ?? said.protocol) : kind(said.kindOfTree),
        step: stepOf(protocol, said.step),
        share: Math.round(said.survival.typical * 100),
        because: because(said.why),
      })
    }
    case 'species-set/1':
      return phrase('Fruit {name} described{because}', {
        name: phrase(said.species.commonName),
        because: because(said.why),
      })
    case 'fact-set/1':
      return phrase('{fruit}: {fact}{because}', {
        fruit: said.species,
        fact: factPhrase(said.set),
        because: because(said.why),
      })
    case 'mother-set/1':
      return phrase('Mother tree {name}: {cultivar}', {
        name: said.mother.name,
        cultivar: cultivar(said.mother.cultivar),
      })
    case 'mother-observed/1':
      return phrase('{mother} observed: {seen}', {
        mother: mother(said.mother),
        seen: [said.bbch && `BBCH ${said.bbch}`, said.health].filter(Boolean).join(', '),
      })
    case 'mother-tested/1':
      return phrase('{mother} tested for {test}: {result}', {
        mother: mother(said.mother),
        test: said.test,
        result: phrase(said.result),
      })
    case 'mother-retired/1':
      return phrase('{mother} retired{because}', { mother: mother(said.mother), because: because(said.why) })
    case 'material-collected/1':
      return phrase('{number} {material} collected from {mother} as {lot}', {
        number: said.number,
        material: phrase(said.material),
        mother: mother(said.mother),
        lot: said.lot,
      })
    case 'material-discarded/1':
      return phrase('{number} of material {lot} thrown away{because}', {
        number: said.number,
        lot: said.lot,
        because: because(said.why),
      })
    case 'batch-started/1':
      return phrase('Batch {name} begun: {number} {kind}{from}{onBench}', {
        name: said.name,
        number: said.number,
        kind: kind(said.kindOfTree),
        from: from(said.sources),
        onBench: onBench(said.bench),
      })
    case 'counted/1':
      return phrase('Counted in {step} ({sign}): {taken} taken, {dead} dead, {undecided} not yet to tell', {
        step: stepName(said.batch, said.step),
        sign: phrase(said.sign),
        taken: said.taken,
        dead: said.dead,
        undecided: said.undecided,
      })
    case 'bench-counted/1': {
      const differences = said.lines
        .filter(({ stood, counted }) => stood !== counted)
        .map(({ batch: id, stood, counted, cause }) =>
          phrase('{counted} of batch {batch} where {stood} were to stand{because}', {
            counted,
            batch: batch(id),
            stood,
            because: because(cause),
          }),
        )
      return phrase('Bench {bench} counted, {lines} lines: {found}', {
        bench: bench(said.bench),
        lines: said.lines.length,
        found: differences.length === 0 ? phrase('as the record has it') : differences,
      })
    }
    case 'lost/1':
      return phrase('{number} lost in {step}: {cause}', {
        number: said.number,
        step: stepName(said.batch, said.step),
        cause: said.cause,
      })
    case 'advanced/1':
      return phrase('{number} from {from} to {to}{onBench}', {
        number: said.number,
        from: stepName(said.batch, said.from),
        to: stepName(said.batch, said.to),
        onBench: onBench(said.bench),
      })
    case 'finished/1':
      return phrase('{number} finished{because}', { number: said.number, because: because(said.grade) })
    case 'moved/1':
      return phrase('{number} in {step} moved to {bench}', {
        number: said.number,
        step: stepName(said.batch, said.step),
        bench: bench(said.to),
      })
    case 'split/1':
      return phrase('{number} split off into batch {name}{because}', {
        number: said.number,
        name: said.name,
        because: because(said.why),
      })
    case 'joined/1':
      return phrase('{number} put with batch {batch}', { number: said.number, batch: batch(said.into) })
    case 'measured/1': {
      const mean = said.calipersMm.reduce((sum, mm) => sum + mm, 0) / said.calipersMm.length
      return phrase('{number} stems measured in {step}: mean {mean}', {
        number: said.calipersMm.length,
        step: stepName(said.batch, said.step),
        mean: { amount: Math.round(10 * mean) / 10, unit: 'mm' },
      })
    }
    case 'graded/1':
      return phrase('Graded in {step}: {grades}', {
        step: stepName(said.batch, said.step),
        grades: Object.entries(said.grades)
          .map(([grade, number]) => `${number} ${grade}`)
          .join(', '),
      })
    case 'potted-on/1':
      return phrase('{number} potted on to {pot}', {
        number: said.number,
        pot: { amount: said.potLitres, unit: 'litres' },
      })
    case 'reworked/1':
      return phrase('{number} worked over to {kind}{from}', {
        number: said.number,
        kind: kind(said.kindOfTree),
        from: from(said.sources),
      })
    case 'name-settled/1':
      return phrase('Name settled: {cultivar}{because}', {
        cultivar: cultivar(said.cultivar),
        because: because(said.how),
      })
    case 'dispatched/1':
      return phrase('{number} sent out{forOrder}{to}', {
        number: said.number,
        forOrder: forOrder(said.order),
        to: said.to === '' ? '' : phrase(' to {buyer}', { buyer: said.to }),
      })
    case 'returned/1':
      return phrase('{number} came back{forOrder}{because}', {
        number: said.number,
        forOrder: forOrder(said.order),
        because: because(said.why),
      })
    case 'hold-placed/1':
      return phrase('Hold on {what} {name}{because}', {
        what: phrase(said.on.what),
        name: heldId(said.on),
        because: because(said.why),
      })
    case 'hold-released/1':
      return phrase('Hold released{because}', { because: because(said.why) })
    case 'order-placed/1':
      return phrase('Order {order}: {number} {kind} by {due}', {
        order: said.order.id,
        number: said.order.number,
        kind: kind(said.order.kind),
        due: { day: said.order.due },
      })
    case 'order-changed/1':
      return phrase('Order {order} changed: {number} {kind} by {due}{because}', {
        order: said.order.id,
        number: said.order.number,
        kind: kind(said.order.kind),
        due: { day: said.order.due },
        because: because(said.why),
      })
    case 'order-cancelled/1':
      return phrase('Order {order} cancelled{because}', { order: said.order, because: because(said.why) })
    case 'plan-accepted/1':
      return phrase('Plan accepted, with {starts} starts', { starts: said.starts.length })
    case 'start-set/1':
      return phrase('Start set: {number} {kind} in week {week} of {year}', {
        number: said.number,
        kind: kind(said.kindOfTree),
        week: Number(said.week.slice(6)),
        year: said.week.slice(0, 4),
      })
    case 'task-done/1':
      return said.minutes === null
        ? phrase('Task done')
        : phrase('Task done in {minutes} minutes', { minutes: said.minutes })
    case 'task-done/2':
      return said.minutes === null
        ? phrase('Task done: {number}', { number: said.number })
        : phrase('Task done: {number}, in {minutes} minutes', { number: said.number, minutes: said.minutes })
    case 'noted/1':
      return phrase('{text}', { text: said.text })
    case 'photographed/1':
      return phrase('Photograph{because}', { because: because(said.caption) })
    case 'struck/1':
      return phrase('An entry struck: {why}', { why: said.why })
    case 'query-settled/1':
      return phrase('A query settled: {how}', { how: said.how })
    default:
      return phrase('Something that only a newer version understands ({kind})', { kind: body.kind })
  }
}

/** A fact of a fruit as it was stated, in the units of the facts. */
function factPhrase({ fact, value }: FactSaid): Phrase {
  const { name, unit } = measureOf(fact) ?? { name: fact, unit: '' }
  const method = fact.startsWith('ways.') ? phrase(fact.split('.')[1]!.replaceAll('_', ' ')) : undefined
  const figure: Phrase =
    method === undefined ? phrase(name) : phrase('{figure}, {method}', { figure: phrase(name), method })
  if ('northMonths' in value)
    return phrase('{figure} set to months {months}', { figure, months: value.northMonths.join(', ') })
  return unit === 'share'
    ? phrase('{figure} set to {share} %', { figure, share: Math.round(100 * value.typical) })
    : phrase('{figure} set to {value} {unit}', { figure, value: value.typical, unit: phrase(unit) })
}
