import type { RatesCompared } from '../../api/index.ts'
import { readRateBook } from '../../planning/index.ts'
import type { Nursery } from '../../record/index.ts'
import { methodById } from '../../trade/facts/index.ts'
import type { PersonId } from '../../trade/index.ts'

/** People and months beside each other, by the model that the plan's rates come from. */
export const ratesCompared = (nursery: Nursery, today: string): RatesCompared => {
  const learnt = readRateBook(nursery, today).compared()
  return {
    people: learnt.comparePeople().map(({ of: { method }, members, finding }) => ({
      method,
      methodName: methodById(method).label,
      members: members.map(one => {
        const member = one.member as PersonId
        return { ...one, member, name: nursery.people.get(member)?.name ?? member }
      }),
      finding,
    })),
    months: learnt.compareMonths().map(({ of: { protocol, step }, members, finding }) => {
      const of = nursery.protocols.get(protocol)
      return {
        protocol,
        protocolName: of?.name ?? protocol,
        step,
        stepName: of?.steps.find(({ id }) => id === step)?.name ?? step,
        members: members.map(one => ({ ...one, member: Number(one.member), name: '' })),
        finding,
      }
    }),
  }
}
