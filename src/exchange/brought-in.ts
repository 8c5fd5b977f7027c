/** What was once brought in from spreadsheets: which files, and which stretch of the log it was written as. */
export interface BroughtIn {
  readonly id: string
  /** Instant, ISO 8601 in UTC. */
  readonly at: string
  readonly by: string | null
  readonly files: readonly string[]
  readonly fromSeq: number
  readonly throughSeq: number
}

interface Memory {
  readonly remember: (key: string, value: unknown) => void
  readonly recall: <T>(key: string) => T | undefined
}

const KEY = 'brought in from spreadsheets'

/** All that was brought in, the latest first. */
export const broughtIn = (log: Pick<Memory, 'recall'>): readonly BroughtIn[] =>
  log.recall<readonly BroughtIn[]>(KEY) ?? []

/** Remembers what was written, so that it can be struck as one. */
export const rememberBrought = (
  log: Memory,
  {
    files,
    written,
    ...brought
  }: Pick<BroughtIn, 'id' | 'at' | 'by'> & {
    readonly files: readonly { readonly name: string }[]
    readonly written: readonly { readonly seq: number }[]
  },
): void => {
  if (written.length === 0) return
  const one: BroughtIn = {
    ...brought,
    files: files.map(({ name }) => name),
    fromSeq: written[0]!.seq,
    throughSeq: written.at(-1)!.seq,
  }
  log.remember(KEY, [one, ...broughtIn(log)])
}
