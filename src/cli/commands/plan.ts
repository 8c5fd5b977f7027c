import { writeCsv } from '../../exchange/index.ts'
import { type Plan, planAsMps, planSeason } from '../../planning/index.ts'
import { foldEntries, isKnown } from '../../record/index.ts'
import { seasonThreads } from '../../server/index.ts'
import { inEnglish } from '../../trade/index.ts'
import { type Command, dayGiven, Trouble, wholeNumber } from '../command.ts'
import { dataFlag, existingLog } from '../data-folder.ts'

const FORMS = ['text', 'csv', 'json', 'mps'] as const
type Form = (typeof FORMS)[number]

const startRows = (plan: Plan): (string | number)[][] => [
  ['week', 'number', 'kind', 'protocol', 'from', 'bench'],
  ...plan.starts.map(start => [
    start.week,
    start.number,
    start.kind,
    start.protocol,
    [
      ...start.mothers.map(({ mother, number }) => `${mother} ${number}`),
      ...start.rootstocks.map(({ kind, batch, number }) => `${batch ?? kind} ${number}`),
    ].join('; '),
    start.bench ?? '',
  ]),
]

const asText = (plan: Plan): string => {
  const rows = startRows(plan)
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map(row => String(row[column]).length)))
  const table = rows.map(row =>
    row
      .map((cell, column) => String(cell).padEnd(widths[column]!))
      .join('  ')
      .trimEnd(),
  )
  const orders = plan.orders.map(
    order =>
      `${order.order}  ${order.wanted} wanted, ${Math.round(order.chance * 100)} % (asked ${Math.round(order.asked * 100)} %)`,
  )
  const limits = plan.limits.map(limit => inEnglish(limit.sentence))
  return [
    'Starts',
    ...table,
    '',
    'Orders',
    ...orders,
    '',
    'What limits',
    ...(limits.length ? limits : ['Nothing does.']),
    '',
  ].join('\n')
}

export const plan: Command = {
  name: 'plan',
  says: 'Plans the season from the log and prints the starts, the orders’ chances and what limits.',
  takes: [],
  flags: [
    dataFlag,
    {
      name: 'as',
      value: FORMS.join('|'),
      says: 'how it is printed; mps: the linear model behind it, for other solvers',
      otherwise: 'text',
    },
    { name: 'today', value: 'DAY', says: 'plan as if it were this day (2026-11-24)', otherwise: 'today' },
    { name: 'seasons', value: 'N', says: 'seasons simulated', otherwise: '2000' },
    { name: 'quiet', says: 'do not tell how it goes on' },
  ],
  examples: [
    'budstick plan',
    'budstick plan --as csv > starts.csv',
    'budstick plan --as json --seasons 500',
    'budstick plan --as mps > season.mps',
  ],
  run: async flags => {
    const form = String(flags.as ?? 'text') as Form
    if (!FORMS.includes(form)) throw new Trouble(`--as takes ${FORMS.join(', ')}, not "${form}".`, 2)
    const today = dayGiven(flags, 'today') ?? new Date().toLocaleDateString('sv-SE')
    const seasons = wholeNumber(flags, 'seasons', 100, 100_000) ?? 2_000
    const log = await existingLog(flags)
    try {
      const entries = log.read({ afterSeq: 0, limit: Number.MAX_SAFE_INTEGER })
      let stopped = false
      process.once('SIGINT', () => {
        stopped = true
      })
      const nursery = foldEntries(entries)
      const accepted = nursery.acceptedPlan?.entry
      const since = accepted ? entries.findLastIndex(({ id }) => id === accepted) + 1 : entries.length
      const news = entries.slice(since).flatMap(entry => (isKnown(entry) ? [entry] : []))
      const made = await planSeason(
        nursery,
        { today, throughSeq: log.lastSeq(), seasons, seed: 20_260_101, previous: null, news },
        {
          onProgress: ({ share, says }) => {
            if (!flags.quiet)
              process.stderr.write(`${String(Math.round(share * 100)).padStart(3)} %  ${inEnglish(says)}\n`)
          },
          isStopped: () => stopped,
          lines: seasonThreads(),
        },
      )
      const printed = {
        text: () => asText(made),
        csv: () => writeCsv(startRows(made)),
        json: () => `${JSON.stringify(made, null, 2)}\n`,
        mps: () => planAsMps(nursery, made),
      }
      process.stdout.write(printed[form]())
    } finally {
      log.close()
    }
  },
}
