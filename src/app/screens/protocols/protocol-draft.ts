import type { Figure, Protocol, Step } from '../../../trade/index.ts'

/** Three numbers as they are being typed. */
export interface FigureDraft {
  readonly low: string
  readonly typical: string
  readonly high: string
}

/** One figure of a protocol that can be changed, as the reader's units show it: `shown` times what is kept. */
export interface FigureField {
  readonly key: string
  readonly what: 'days' | 'survival' | 'density' | 'minutes'
  /** The task whose minutes these are. */
  readonly task: string | null
  readonly figure: Figure
  readonly shown: number
}

export interface ProtocolDraft {
  readonly figures: Readonly<Record<string, FigureDraft>>
  readonly tray: string
  readonly smallestBatch: string
  readonly usableDays: string
  /** Months from 1 to 12 in which it may begin at this site. */
  readonly months: readonly number[]
}

/** The figures of a step that the draft can change. `perArea`: areas in the reader's unit to one square metre. */
export const fieldsOf = (step: Step, perArea: number): readonly FigureField[] => [
  { key: `${step.id} days`, what: 'days', task: null, figure: step.days, shown: 1 },
  { key: `${step.id} survival`, what: 'survival', task: null, figure: step.survival, shown: 100 },
  ...(step.plantsPerSquareMetre === null
    ? []
    : [
        {
          key: `${step.id} density`,
          what: 'density' as const,
          task: null,
          figure: step.plantsPerSquareMetre,
          shown: 1 / perArea,
        },
      ]),
  ...step.work.map(({ task, minutesPerPlant }, index) => ({
    key: `${step.id} work ${index}`,
    what: 'minutes' as const,
    task,
    figure: minutesPerPlant,
    shown: 1,
  })),
]

const typed = (value: number): string => String(Number(value.toPrecision(4)))

const draftOfFigure = ({ figure, shown }: FigureField): FigureDraft => ({
  low: typed(figure.low * shown),
  typical: typed(figure.typical * shown),
  high: typed(figure.high * shown),
})

export const draftOf = (protocol: Protocol, months: readonly number[], perArea: number): ProtocolDraft => ({
  figures: Object.fromEntries(
    protocol.steps.flatMap(step =>
      fieldsOf(step, perArea).map(field => [field.key, draftOfFigure(field)] as const),
    ),
  ),
  tray: String(protocol.tray),
  smallestBatch: String(protocol.smallestBatch),
  usableDays: String(protocol.usableDays),
  months,
})

const number = (text: string): number =>
  text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.'))

/** What was typed for a figure; the figure itself where nothing was changed, null where it cannot be. */
const readFigure = (field: FigureField, said: FigureDraft | undefined): Figure | null => {
  const was = draftOfFigure(field)
  if (said === undefined || (['low', 'typical', 'high'] as const).every(end => said[end] === was[end]))
    return field.figure
  const [low, typical, high] = [said.low, said.typical, said.high].map(text => number(text) / field.shown)
  const rises = 0 <= low! && low! <= typical! && typical! <= high!
  const fits = field.what === 'survival' ? high! <= 1 : field.what !== 'density' || low! > 0
  if (!(rises && fits && Number.isFinite(high!))) return null
  return { low: low!, typical: typical!, high: high!, basis: 'set by the nursery', sources: [] }
}

const atLeastOne = (text: string): number | null => {
  const value = number(text)
  return Number.isInteger(value) && value >= 1 ? value : null
}

/**
 * The protocol as the draft has it, and the keys of what cannot be so; a wrong figure leaves the one before in its
 * place, so that the reckoning goes on. Every figure that was changed is from then on set by the nursery.
 */
export const readProtocol = (
  protocol: Protocol,
  draft: ProtocolDraft,
  { perArea, isSouth }: { readonly perArea: number; readonly isSouth: boolean },
): { readonly protocol: Protocol; readonly wrong: ReadonlySet<string> } => {
  const wrong = new Set<string>()
  const steps = protocol.steps.map((step): Step => {
    const [days, survival, ...rest] = fieldsOf(step, perArea).map(field => {
      const read = readFigure(field, draft.figures[field.key])
      if (read === null) wrong.add(field.key)
      return read ?? field.figure
    })
    const density = step.plantsPerSquareMetre === null ? null : rest.shift()!
    return {
      ...step,
      days: days!,
      survival: survival!,
      plantsPerSquareMetre: density,
      work: step.work.map((work, index) => ({ ...work, minutesPerPlant: rest[index]! })),
    }
  })
  const whole = (key: 'tray' | 'smallestBatch' | 'usableDays'): number => {
    const read = atLeastOne(draft[key])
    if (read === null) wrong.add(key)
    return read ?? protocol[key]
  }
  const side = isSouth ? 'southMonths' : 'northMonths'
  const sameMonths = draft.months.join() === protocol.window[side].join()
  return {
    protocol: {
      ...protocol,
      steps,
      tray: whole('tray'),
      smallestBatch: whole('smallestBatch'),
      usableDays: whole('usableDays'),
      window: sameMonths
        ? protocol.window
        : { ...protocol.window, [side]: draft.months, basis: 'set by the nursery', sources: [] },
    },
    wrong,
  }
}
