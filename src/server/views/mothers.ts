import type { MotherRow } from '../../api/index.ts'
import { heldMothers, type Nursery } from '../../record/index.ts'

export const motherRows = (nursery: Nursery, today: string): MotherRow[] => {
  const held = heldMothers(nursery)
  const year = today.slice(0, 4)
  return [...nursery.mothers.values()].map(state => ({
    mother: state.mother,
    cultivarName: nursery.cultivars.get(state.mother.cultivar)?.name ?? state.mother.cultivar,
    givenThisYear: state.mother.gives.map(({ material, perYear }) => ({
      material,
      mayGive: perYear,
      number: state.given
        .filter(given => given.material === material && given.on.startsWith(year))
        .reduce((sum, given) => sum + given.number, 0),
    })),
    onHold: held.has(state.mother.id),
    retired: state.retired !== null,
    lastTest: state.tests.at(-1) ?? null,
    bbch: state.observations.findLast(({ bbch }) => bbch !== null)?.bbch ?? null,
  }))
}
