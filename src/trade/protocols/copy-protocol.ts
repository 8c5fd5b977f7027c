import type { ProtocolId } from '../ids.ts'
import { Protocol } from '../protocol.ts'

/** A nursery's own protocol from another: what is changed is changed, the rest stays, and it says what it came from. */
export const copyProtocol = (
  from: Protocol,
  own: {
    readonly id: ProtocolId
    readonly name: string
    readonly changes?: Partial<Omit<Protocol, 'id' | 'name' | 'basedOn'>>
  },
): Protocol =>
  Protocol.parse({ ...from, version: 1, ...own.changes, id: own.id, name: own.name, basedOn: from.id })
