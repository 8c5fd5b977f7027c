import { thirtyClimates } from '../src/advice/climate/thirty-climates.ts'
import { Question, usualWays, whichTree, whichWay } from '../src/advice/index.ts'
import { allSpecies } from '../src/trade/facts/index.ts'
import type { Measured } from './measure.ts'

/** Each question is asked so often and the middle time taken: tidying of memory strikes another one each round. */
const ROUNDS = 5

/** Which tree, for every fruit in each of thirty climates: processor time of one answer, and of the slowest. */
export default function measure(): Measured {
  const questions = allSpecies().flatMap(species =>
    thirtyClimates.map(climate => ({
      species,
      question: Question.parse({ species: species.id, climate, wouldRework: true }),
    })),
  )
  for (const { question, species } of questions.slice(0, 60)) whichTree(question, species)
  const once = ({ question, species }: (typeof questions)[number]) => {
    const before = process.cpuUsage()
    whichTree(question, species)
    const { user, system } = process.cpuUsage(before)
    return (user + system) / 1e3
  }
  const rounds = Array.from({ length: ROUNDS }, () => questions.map(once))
  const times = questions
    .map((_, i) => rounds.map(round => round[i]!).sort((a, b) => a - b)[Math.floor(ROUNDS / 2)]!)
    .sort((a, b) => a - b)
  const before = process.cpuUsage()
  for (const species of allSpecies()) whichWay(usualWays(species), { hour: 20, squareMetreWeek: 0.4 })
  const maker = process.cpuUsage(before)
  return {
    figures: {
      answers: times.length,
      millisecondsEach: times.reduce((sum, time) => sum + time, 0) / times.length,
      millisecondsMiddle: times[Math.floor(times.length / 2)]!,
      milliseconds99of100: times[Math.floor(times.length * 0.99)]!,
      millisecondsSlowest: times.at(-1)!,
      millisecondsSlowestOfAllRounds: Math.max(...rounds.flat()),
      makersSideMillisecondsEach: (maker.user + maker.system) / 1e3 / allSpecies().length,
    },
    rivals: {},
    notes: ['Processor time, not wall time. Goal: under 20 ms each.'],
  }
}
