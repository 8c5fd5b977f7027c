import type { MotherRow } from '../../api/index.ts'
import {
  countOnSupplies,
  heldMothers,
  type Mother,
  type MotherState,
  type Nursery,
} from '../../record/index.ts'

export const motherRow = (nursery: Nursery, state: MotherState, today: string): MotherRow => {
  const ofYear = state.given.filter(({ on }) => on.startsWith(today.slice(0, 4)))
  const lastTest = state.tests.at(-1)
  return {
    mother: state.mother,
    cultivarName: nursery.cultivars.get(state.mother.cultivar)?.name ?? state.mother.cultivar,
    givenThisYear: givenOfEach(state.mother.gives, ofYear),
    onHold: heldMothers(nursery).has(state.mother.id),
    retired: state.retired !== null,
    lastTest: lastTest
      ? { on: lastTest.on, test: lastTest.test, result: lastTest.result, validUntil: lastTest.validUntil }
      : null,
    bbch: state.observations.findLast(({ bbch }) => bbch !== null)?.bbch ?? null,
  }
}

const givenOfEach = (gives: Mother['gives'], given: MotherState['given']): MotherRow['givenThisYear'] => {
  const counted = [...countOnSupplies(gives, given)]
  return gives.map(supply => ({
    material: supply.material,
    mayGive: supply.perYear,
    number: counted.reduce((sum, one) => sum + (one.supply === supply ? one.number : 0), 0),
  }))
}

export const motherRows = (nursery: Nursery, today: string): MotherRow[] =>
  [...nursery.mothers.values()].map(state => motherRow(nursery, state, today))
