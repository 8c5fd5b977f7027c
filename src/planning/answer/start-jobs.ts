import { dayText, weekStart } from '../../science/index.ts'
import { capital, type Phrase, phrase } from '../../trade/index.ts'
import { grouped } from '../grouped.ts'
import type { PlannedStart } from '../plan.ts'
import { blankTask, doneBy, WEEKS_AHEAD } from './blank-task.ts'
import type { Job } from './give-days.ts'
import { type Planned, startedNoun, weekName } from './planned.ts'
import type { MotherShare } from './share-mothers.ts'

/** Friday and Saturday, counted from Monday. */
const FRIDAY = 4
const SATURDAY = 5

/** The working day on or before a day. */
function workingDay(day: number): number {
  const ofWeek = (((day - weekStart(0)) % 7) + 7) % 7
  return ofWeek >= SATURDAY ? day - (ofWeek - FRIDAY) : day
}

/** What leads to a start, the start itself, and what else is done to it on that day. */
export function startJobs(
  planned: Planned,
  starts: readonly PlannedStart[],
  shares: readonly MotherShare[],
): Job[] {
  const { season, nursery } = planned
  const sharesOf = grouped(shares, share => share.start)
  return starts.flatMap((start, s) => {
    const { week, way } = planned.starts[s]!
    const { protocol, tray } = season.ways[way]!
    const about = { ...blankTask, method: start.method, start: start.id, kind: start.kind }
    const monday = (w: number) => weekStart(season.firstWeek + w)
    const jobs: Job[] = []
    protocol.before.forEach((preparation, p) => {
      const at = week - Math.ceil(preparation.daysBefore / 7)
      if (at < 0 || at >= WEEKS_AHEAD) return
      jobs.push({
        task: {
          ...about,
          id: `${start.id}/prepare/${p}`,
          week: weekName(season, at),
          task: phrase(capital(preparation.task)),
          kindOfTask: 'prepare',
          number: start.number,
          skill: preparation.skill,
          minutes: Math.round(preparation.minutesPerPlant.typical * start.number),
          caution: preparation.caution ?? null,
        },
        on: dayText(workingDay(monday(week) - preparation.daysBefore)),
      })
    })
    const main = `${start.id}/start`
    for (const [cut, of] of grouped(sharesOf.get(s) ?? [], share => share.week)) {
      if (cut >= WEEKS_AHEAD) continue
      for (const { mother, number, pool } of of)
        jobs.push({
          task: {
            ...about,
            id: `${start.id}/collect/${mother}/${weekName(season, cut)}`,
            week: weekName(season, cut),
            task: phrase('Collect {material}', { material: phrase(season.pools[pool]!.material) }),
            kindOfTask: 'collect',
            number,
            from: [phrase('{mother}', { mother: nursery.mothers.get(mother)?.mother.name ?? mother })],
          },
          // As fresh as can be: with the work of the same week, else at the end of the week in which it is cut.
          ...(cut === week ? { before: main } : { on: dayText(monday(cut) + FRIDAY) }),
        })
    }
    if (week >= WEEKS_AHEAD) return jobs
    const first = protocol.steps[0]!
    const [act, ...others] = first.work.filter(({ when }) => when === 'begin')
    const isCut = (sharesOf.get(s) ?? []).some(({ week: cut }) => cut < week)
    jobs.push({
      task: {
        ...about,
        id: main,
        week: start.week,
        task: act
          ? phrase(capital(act.task))
          : phrase('Begin {noun}', { noun: startedNoun(start.method, start.number) }),
        kindOfTask: 'start',
        step: first.id,
        number: start.number,
        from: sourcesSaid(planned, start),
        bench: start.bench,
        ...(act ? doneBy(act, start.number) : {}),
        caution: act?.caution ?? protocol.cautions[0] ?? null,
      },
      tray,
      // What is cut already spoils first.
      isUrgent: isCut,
    })
    for (const work of others)
      jobs.push({
        task: {
          ...about,
          id: `${main}/${work.task}`,
          week: start.week,
          task: phrase(capital(work.task)),
          kindOfTask: 'work',
          step: first.id,
          number: start.number,
          bench: start.bench,
          ...doneBy(work, start.number),
        },
        after: main,
      })
    return jobs
  })
}

function sourcesSaid({ nursery }: Planned, { mothers, rootstocks }: PlannedStart): Phrase[] {
  return [
    ...mothers.map(({ mother, material, number }) =>
      phrase('{number} {material} of {mother}', {
        number,
        material: phrase(material),
        mother: nursery.mothers.get(mother)?.mother.name ?? mother,
      }),
    ),
    ...rootstocks.map(({ kind: id, batch, number }) => {
      const kind = nursery.kinds.get(id)?.name ?? id
      return batch === null
        ? phrase('{number} {kind}', { number, kind })
        : phrase('{number} {kind} from batch {batch}', {
            number,
            kind,
            batch: nursery.batches.get(batch)?.name ?? batch,
          })
    }),
  ]
}
