import { type FactSaid, measureOf } from '../trade/index.ts'
import type { AnyEntry, Body, Source } from './entry.ts'
import { heldId } from './fold/subjects.ts'
import type { Nursery } from './state.ts'

type Names = Pick<
  Nursery,
  'batches' | 'mothers' | 'kinds' | 'cultivars' | 'protocols' | 'benches' | 'people' | 'former' | 'orders'
>

/** Looks an id up that is text here, whatever it names. */
const at = <T>(map: ReadonlyMap<string, T>, id: string): T | undefined => map.get(id)

/** What an entry says, in one line for people. Things are called by the names that they have now. */
export function entryText(body: AnyEntry['body'], names: Names): string {
  const batch = (id: string) => at(names.batches, id)?.name ?? id
  const mother = (id: string) => at(names.mothers, id)?.mother.name ?? id
  const kind = (id: string) => (at(names.kinds, id) ?? at(names.former.kinds, id))?.name ?? id
  const bench = (id: string) => (at(names.benches, id) ?? at(names.former.benches, id))?.name ?? id
  const person = (id: string) => (at(names.people, id) ?? at(names.former.people, id))?.name ?? id
  const cultivar = (id: string) => at(names.cultivars, id)?.name ?? id
  const stepName = (ofBatch: string, step: string) => {
    const protocol = at(names.protocols, at(names.batches, ofBatch)?.protocol ?? '')
    return protocol?.steps.find(({ id }) => id === step)?.name ?? step
  }
  const because = (why: string) => (why === '' ? '' : ` (${why})`)
  const onBench = (id: string | null) => (id === null ? '' : `, on ${bench(id)}`)
  const forOrder = (id: string | null) => (id === null ? '' : ` for order ${id}`)
  const sourceText = (source: Source): string => {
    switch (source.from) {
      case 'mother':
        return `${source.number} ${source.material} of ${mother(source.mother)}`
      case 'lot':
        return `${source.number} of material ${source.lot}`
      case 'batch':
        return `${source.number} of batch ${batch(source.batch)} as ${source.as}`
      case 'bought':
        return `${source.number} ${source.material} from ${source.supplier}`
    }
  }
  const from = (sources: readonly Source[]) =>
    sources.length === 0 ? '' : `, from ${sources.map(sourceText).join(', ')}`

  const said = body as Body
  switch (said.kind) {
    case 'site-set/1':
      return `Site: ${said.site.name}`
    case 'bench-set/1':
      return `Bench ${said.bench.name}: ${said.bench.place}, ${said.bench.areaSquareMetres} m²`
    case 'bench-removed/1':
      return `Bench ${bench(said.bench)} removed${because(said.why)}`
    case 'person-set/1':
      return `${said.person.name}: ${said.person.hoursPerWeek} hours a week`
    case 'person-left/1':
      return `${person(said.person)} left`
    case 'cultivar-set/1':
      return `Cultivar ${said.cultivar.name}`
    case 'kind-set/1':
      return `Kind of tree: ${said.kindOfTree.name}`
    case 'kind-dropped/1':
      return `${kind(said.kindOfTree)} made no more${because(said.why)}`
    case 'protocol-set/1':
      return `Protocol ${said.protocol.name}, version ${said.protocol.version}`
    case 'prices-set/1':
      return 'Prices set'
    case 'settings-set/1':
      return 'Settings set'
    case 'rate-set/1':
      return `Survival in ${said.step} set to ${Math.round(said.survival.typical * 100)} %${because(said.why)}`
    case 'species-set/1':
      return `Fruit ${said.species.commonName} described${because(said.why)}`
    case 'fact-set/1':
      return `${said.species}: ${factText(said.set)}${because(said.why)}`
    case 'mother-set/1':
      return `Mother tree ${said.mother.name}: ${cultivar(said.mother.cultivar)}`
    case 'mother-observed/1':
      return `${mother(said.mother)} observed: ${[said.bbch && `BBCH ${said.bbch}`, said.health].filter(Boolean).join(', ')}`
    case 'mother-tested/1':
      return `${mother(said.mother)} tested for ${said.test}: ${said.result}`
    case 'mother-retired/1':
      return `${mother(said.mother)} retired${because(said.why)}`
    case 'material-collected/1':
      return `${said.number} ${said.material} collected from ${mother(said.mother)} as ${said.lot}`
    case 'material-discarded/1':
      return `${said.number} of material ${said.lot} thrown away${because(said.why)}`
    case 'batch-started/1':
      return `Batch ${said.name} begun: ${said.number} ${kind(said.kindOfTree)}${from(said.sources)}${onBench(said.bench)}`
    case 'counted/1':
      return `Counted in ${stepName(said.batch, said.step)} (${said.sign}): ${said.taken} taken, ${said.dead} dead, ${said.undecided} not yet to tell`
    case 'bench-counted/1': {
      const differences = said.lines.flatMap(({ batch: id, stood, counted, cause }) =>
        stood === counted
          ? []
          : `${counted} of batch ${batch(id)} where ${stood} were to stand${because(cause)}`,
      )
      const found = differences.length === 0 ? 'as the record has it' : differences.join('; ')
      return `Bench ${bench(said.bench)} counted, ${said.lines.length} lines: ${found}`
    }
    case 'lost/1':
      return `${said.number} lost in ${stepName(said.batch, said.step)}: ${said.cause}`
    case 'advanced/1':
      return `${said.number} from ${stepName(said.batch, said.from)} to ${stepName(said.batch, said.to)}${onBench(said.bench)}`
    case 'finished/1':
      return `${said.number} finished${because(said.grade)}`
    case 'moved/1':
      return `${said.number} in ${stepName(said.batch, said.step)} moved to ${bench(said.to)}`
    case 'split/1':
      return `${said.number} split off into batch ${said.name}${because(said.why)}`
    case 'joined/1':
      return `${said.number} put with batch ${batch(said.into)}`
    case 'measured/1': {
      const mean = said.calipersMm.reduce((sum, mm) => sum + mm, 0) / said.calipersMm.length
      return `${said.calipersMm.length} stems measured in ${stepName(said.batch, said.step)}: mean ${mean.toFixed(1)} mm`
    }
    case 'graded/1': {
      const grades = Object.entries(said.grades).map(([grade, number]) => `${number} ${grade}`)
      return `Graded in ${stepName(said.batch, said.step)}: ${grades.join(', ')}`
    }
    case 'potted-on/1':
      return `${said.number} potted on to ${said.potLitres} l`
    case 'reworked/1':
      return `${said.number} worked over to ${kind(said.kindOfTree)}${from(said.sources)}`
    case 'name-settled/1':
      return `Name settled: ${cultivar(said.cultivar)}${because(said.how)}`
    case 'dispatched/1':
      return `${said.number} sent out${forOrder(said.order)}${said.to === '' ? '' : ` to ${said.to}`}`
    case 'returned/1':
      return `${said.number} came back${forOrder(said.order)}${because(said.why)}`
    case 'hold-placed/1':
      return `Hold on ${said.on.what} ${heldId(said.on)}${because(said.why)}`
    case 'hold-released/1':
      return `Hold released${because(said.why)}`
    case 'order-placed/1':
      return `Order ${said.order.id}: ${said.order.number} ${kind(said.order.kind)} by ${said.order.due}`
    case 'order-changed/1':
      return `Order ${said.order.id} changed: ${said.order.number} ${kind(said.order.kind)} by ${said.order.due}${because(said.why)}`
    case 'order-cancelled/1':
      return `Order ${said.order} cancelled${because(said.why)}`
    case 'plan-accepted/1':
      return `Plan accepted, with ${said.starts.length} starts`
    case 'task-done/1':
      return `Task done${said.minutes === null ? '' : ` in ${said.minutes} minutes`}`
    case 'noted/1':
      return said.text
    case 'photographed/1':
      return `Photograph${because(said.caption)}`
    case 'struck/1':
      return `An entry struck: ${said.why}`
    case 'query-settled/1':
      return `A query settled: ${said.how}`
    default:
      return `Something that only a newer version understands (${body.kind})`
  }
}

/** A fact of a fruit as it was stated, in the units of the facts. */
function factText({ fact, value }: FactSaid): string {
  const { name, unit } = measureOf(fact) ?? { name: fact, unit: '' }
  const of = fact.startsWith('ways.') ? `, ${fact.split('.')[1]!.replaceAll('_', ' ')}` : ''
  if ('northMonths' in value) return `${name}${of} set to months ${value.northMonths.join(', ')}`
  const shown = unit === 'share' ? `${Math.round(100 * value.typical)} %` : `${value.typical} ${unit}`.trim()
  return `${name}${of} set to ${shown}`
}
