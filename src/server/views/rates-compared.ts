import type { RatesCompared } from '../../api/index.ts'
import { readRateBook } from '../../planning/index.ts'
import { fruitsOf, type Nursery } from '../../record/index.ts'
import { methodById } from '../../trade/facts/index.ts'
import type {
  CultivarId,
  KindId,
  MethodId,
  PersonId,
  ProtocolId,
  SpeciesId,
  StepId,
} from '../../trade/index.ts'

/** People, rootstocks, months, kinds, methods and cultivars beside each other, by the model that the plan's rates come from. */
export const ratesCompared = (nursery: Nursery, today: string): RatesCompared => {
  const learnt = readRateBook(nursery, today).compared()
  const inMethod = ({ method }: { method: MethodId }) => ({ method, methodName: methodById(method).label })
  const fruits = fruitsOf(nursery)
  const inFruit = ({ species }: { species: SpeciesId }) => ({
    species,
    fruitName: fruits.byId(species)?.commonName ?? species,
  })
  const inStep = ({ protocol, step }: { protocol: ProtocolId; step: StepId }) => {
    const of = nursery.protocols.get(protocol)
    const stepName = of?.steps.find(({ id }) => id === step)?.name ?? step
    return { protocol, protocolName: of?.name ?? protocol, step, stepName }
  }
  const person = <One extends { member: string }>(one: One) => {
    const member = one.member as PersonId
    return { ...one, member, name: nursery.people.get(member)?.name ?? member }
  }
  const kind = <One extends { member: string }>(one: One) => {
    const member = one.member as KindId
    const of = nursery.kinds.get(member) ?? nursery.former.kinds.get(member)
    return { ...one, member, name: of?.name ?? member }
  }
  const month = <One extends { member: string }>(one: One) => ({
    ...one,
    member: Number(one.member),
    name: '',
  })
  return {
    people: learnt.comparePeople().map(({ of, members, ...rest }) => ({
      ...inMethod(of),
      ...rest,
      members: members.map(person),
    })),
    rootstocks: learnt.compareRootstocks().map(({ of, members, ...rest }) => ({
      ...inMethod(of),
      ...rest,
      members: members.map(kind),
    })),
    months: learnt.compareMonths().map(({ of, members, ...rest }) => ({
      ...inStep(of),
      ...rest,
      members: members.map(month),
    })),
    kinds: learnt.compareKinds().map(({ of, members, ...rest }) => ({
      ...inStep(of),
      ...rest,
      members: members.map(kind),
    })),
    methods: learnt.compareMethods().map(({ of, members, ...rest }) => ({
      ...inFruit(of),
      ...rest,
      members: members.map(one => {
        const member = one.member as MethodId
        return { ...one, member, name: methodById(member).label }
      }),
    })),
    cultivars: learnt.compareCultivars().map(({ of, members, ...rest }) => ({
      ...inFruit(of),
      ...inMethod(of),
      ...rest,
      members: members.map(one => {
        const member = one.member as CultivarId
        return { ...one, member, name: nursery.cultivars.get(member)?.name ?? member }
      }),
    })),
  }
}
