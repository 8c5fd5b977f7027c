import type { KindId } from '../../trade/index.ts'
import type { Entry, Source } from '../entry.ts'
import type { Query } from '../query.ts'
import type { Origin } from '../state.ts'
import type { Draft } from './batch-draft.ts'
import { ask, type Surroundings } from './batch-rules.ts'
import type { Registers } from './register-questions.ts'

/** Notes where plants or wood of a batch come from, and asks if it is the wrong wood. */
export function addSources(
  draft: Draft,
  entry: Entry,
  sources: readonly Source[],
  atBirth: boolean,
  around: Surroundings,
): void {
  for (const source of sources) {
    draft.sources.push(source)
    draft.origins.push(originOf(source, entry, atBirth))
  }
  const wrong = wrongWood(draft.kind, sources, around.registers)
  if (wrong) around.query(ask(draft, entry, 'wrong-wood', wrong))
}

function originOf(source: Source, { id: entry, on }: Entry, atBirth: boolean): Origin {
  const { number } = source
  switch (source.from) {
    case 'mother':
      return { entry, on, from: 'mother', id: source.mother, as: source.material, number, atBirth }
    case 'lot':
      return { entry, on, from: 'lot', id: source.lot, as: 'lot', number, atBirth }
    case 'batch':
      return { entry, on, from: 'batch', id: source.batch, as: source.as, number, atBirth }
    case 'bought':
      return { entry, on, from: 'bought', id: source.supplier, as: source.material, number, atBirth }
  }
}

/** Wood of a cultivar that the kind does not name, nor as its interstem. Seed is left out: its seedlings are of no cultivar. */
function wrongWood(kindId: KindId, sources: readonly Source[], registers: Registers): Query['facts'] | null {
  const kind = registers.kind(kindId)
  if (!kind || kind.cultivars.length === 0) return null
  for (const source of sources) {
    const taken =
      source.from === 'mother' ? source : source.from === 'lot' ? registers.lot(source.lot) : undefined
    if (!taken || taken.material === 'seed') continue
    const mother = registers.mother(taken.mother)
    if (!mother || mother.rootstockKind !== null) continue
    if (kind.cultivars.includes(mother.cultivar) || kind.interstem === mother.cultivar) continue
    return { wanted: kind.name, got: registers.cultivarName(mother.cultivar), from: mother.name }
  }
  return null
}

/** Plants of this batch went into another: rootstocks and whole plants leave it, scion wood does not cost a plant. */
export const takesPlants = (source: Extract<Source, { readonly from: 'batch' }>): boolean =>
  source.as === 'rootstock' || source.as === 'whole plant'
