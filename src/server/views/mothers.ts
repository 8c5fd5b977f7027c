import type { MotherRow } from '../../api/index.ts'
import { heldMothers, type MotherState, type Nursery } from '../../record/index.ts'

export const motherRow = (nursery: Nursery, state: MotherState, today: string): MotherRow => {
  const year = today.slice(0, 4)
  const lastTest = state.tests.at(-1)
  return {
    mother: state.mother,
    cultivarName: nursery.cultivars.get(state.mother.cultivar)?.name ?? state.mother.cultivar,
    givenThisYear: state.mother.gives.map(({ material, perYear }) => ({
      material,
      mayGive: perYear,
      number: state.given
        .filter(given => given.material === material && given.on.startsWith(year))
        .reduce((sum, given) => sum + given.number, 0),
    })),
    onHold: heldMothers(nursery).has(state.mother.id),
    retired: state.retired !== null,
    lastTest: lastTest
      ? { on: lastTest.on, test: lastTest.test, result: lastTest.result, validUntil: lastTest.validUntil }
      : null,
    bbch: state.observations.findLast(({ bbch }) => bbch !== null)?.bbch ?? null,
  }
}

export const motherRows = (nursery: Nursery, today: string): MotherRow[] =>
  [...nursery.mothers.values()].map(state => motherRow(nursery, state, today))
