import { useQuery } from '@tanstack/react-query'
import { createContext, type ReactNode, useContext, useMemo } from 'react'
import type { NurseryView, ProtocolSummary } from '../../api/index.ts'
import type { Bench, Person } from '../../record/index.ts'
import type { Kind } from '../../trade/index.ts'
import { type Term, useTerm } from '../text/use-term.ts'
import { look } from './queries.ts'

/** The nursery's things by id, and the names to show for them; an id unknown here is shown as it is. */
export interface Names {
  readonly nursery: NurseryView | undefined
  readonly benches: ReadonlyMap<string, Bench>
  readonly people: ReadonlyMap<string, Person>
  readonly kinds: ReadonlyMap<string, Kind>
  readonly protocols: ReadonlyMap<string, ProtocolSummary>
  readonly bench: (id: string | null) => string
  readonly person: (id: string | null) => string
  readonly kind: (id: string) => string
  readonly protocol: (id: string) => string
}

const byId = <T extends { readonly id: string }>(things: readonly T[] | undefined): ReadonlyMap<string, T> =>
  new Map(things?.map(thing => [thing.id, thing]))

/** Protocols that a nursery took over from the facts are called so in the language spoken. */
const inWords = (nursery: NurseryView | undefined, term: Term): NurseryView | undefined =>
  nursery && {
    ...nursery,
    protocols: nursery.protocols.map(protocol => ({
      ...protocol,
      name: term(protocol.name),
      steps: protocol.steps.map(step => ({ ...step, name: term(step.name) })),
    })),
  }

const namesOf = (nursery: NurseryView | undefined): Names => {
  const benches = byId(nursery?.benches)
  const people = byId(nursery?.people)
  const kinds = byId(nursery?.kinds)
  const protocols = byId(nursery?.protocols)
  return {
    nursery,
    benches,
    people,
    kinds,
    protocols,
    bench: id => (id === null ? '' : (benches.get(id)?.name ?? id)),
    person: id => (id === null ? '' : (people.get(id)?.name ?? id)),
    kind: id => kinds.get(id)?.name ?? id,
    protocol: id => protocols.get(id)?.name ?? id,
  }
}

const NamesContext = createContext(namesOf(undefined))

/** Made once for the whole app: every line of a list asks for them. */
export function NamesProvider({ children }: { readonly children: ReactNode }) {
  const { data: nursery } = useQuery(look.nursery())
  const term = useTerm()
  const names = useMemo(() => namesOf(inWords(nursery, term)), [nursery, term])
  return <NamesContext value={names}>{children}</NamesContext>
}

export const useNames = (): Names => useContext(NamesContext)
