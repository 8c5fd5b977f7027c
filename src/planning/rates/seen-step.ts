import type { Observation } from '../../record/index.ts'
import type { CultivarId, KindId, PersonId } from '../../trade/index.ts'

/** What one batch did in one step, with what is known of it; month and year are those in which the batch was begun. */
export interface SeenStep
  extends Pick<
    Observation,
    'protocol' | 'method' | 'step' | 'species' | 'kind' | 'month' | 'year' | 'entered' | 'survived'
  > {
  readonly person: PersonId | null
  /** Of worked trees, the one kind that they stand on. */
  readonly rootstock: KindId | null
  /** The one cultivar of the kind. */
  readonly cultivar: CultivarId | null
}

/** A step of a future batch; the person is null where nobody, or more than one, is known to do it. */
export type AskedStep = Omit<SeenStep, 'species' | 'year' | 'rootstock' | 'cultivar' | 'entered' | 'survived'>

/** Names of the levels that a count belongs to: a hand shows in all steps of a method, the others in the very step. */
export const stepOf = ({ protocol, step }: Pick<AskedStep, 'protocol' | 'step'>) => `${protocol} ${step}`
export const levelsOf = (said: AskedStep) => ({
  step: stepOf(said),
  kind: `${stepOf(said)} ${said.kind}`,
  month: `${stepOf(said)} ${said.month}`,
  person: said.person === null ? undefined : `${said.method} ${said.person}`,
})
/** The simulated seasons share their luck in the same groups. */
export const yearOf = ({ method, species, step, year }: SeenStep) => `${method}, ${species}, ${step}, ${year}`
export const contextOf = (row: SeenStep) => ({
  ...levelsOf(row),
  year: yearOf(row),
  rootstock: row.rootstock === null ? undefined : `${row.method} ${row.rootstock}`,
  cultivar: row.cultivar === null ? undefined : `${row.species} ${row.method} ${row.cultivar}`,
  method: `${row.species} ${row.method}`,
})
