import type { ProtocolSummary, SeasonPlan } from '../../../api/index.ts'
import { markOfMethod } from '../../../trade/index.ts'
import { answering } from '../../data/folded.ts'
import type { NamedRow } from '../../pictures/season-strip/strip-picture.tsx'

/** One lane for each kind and protocol that the plan starts, by the first start; those that answer to the words. */
export const stripRows = (
  plan: SeasonPlan,
  kindName: (id: string) => string,
  protocols: ReadonlyMap<string, ProtocolSummary>,
  find: string,
): readonly NamedRow[] => {
  const lanes = new Map<string, SeasonPlan['starts'][number][]>()
  for (const start of plan.starts) {
    const lane = `${start.kind} ${start.protocol}`
    lanes.set(lane, [...(lanes.get(lane) ?? []), start])
  }
  const answers = answering(find)
  return [...lanes]
    .map(([id, starts]): NamedRow => {
      const first = starts[0]!
      const protocol = protocols.get(first.protocol)
      return {
        id,
        name: kindName(first.kind),
        also: protocol?.name ?? first.protocol,
        mark: markOfMethod(first.method),
        months: protocol?.window.months ?? [],
        starts: starts
          .map(({ id, week, number, set }) => ({ id, week, number, isSet: set !== null }))
          .sort((a, b) => a.week.localeCompare(b.week)),
      }
    })
    .filter(({ name, also }) => answers(`${name} ${also}`))
    .sort((a, b) => a.starts[0]!.week.localeCompare(b.starts[0]!.week) || a.name.localeCompare(b.name))
}
