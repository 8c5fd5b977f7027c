import type { Skill } from '../../trade/index.ts'
import type { Season } from '../season.ts'

/** The skills that any work of a season asks for, in the order in which they are counted. */
export function skillsOf(season: Season): readonly Skill[] {
  const skills = new Set<Skill>(skillsOfWays(season.ways))
  for (const batch of season.batches) for (const { skill } of batch.labour) skills.add(skill)
  return [...skills].sort()
}

/** Parts of a season have the same ways, and each asks for itself. */
function skillsOfWays(ways: Season['ways']): ReadonlySet<Skill> {
  let skills = known.get(ways)
  if (!skills) {
    skills = new Set(
      ways.flatMap(({ courses }) => courses.flatMap(({ labour }) => labour.map(({ skill }) => skill))),
    )
    known.set(ways, skills)
  }
  return skills
}
const known = new WeakMap<Season['ways'], ReadonlySet<Skill>>()
