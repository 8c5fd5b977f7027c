import * as z from 'zod'
import sources from './sources.json' with { type: 'json' }

/** A document that stands behind a figure, and how much of it was seen. */
export const Source = z
  .object({
    id: z.string().min(1),
    authors: z.string(),
    year: z.number().int().nullable().default(null),
    title: z.string().min(1),
    publisher: z.string(),
    where: z.string(),
    /** A source that was not read stands only beside a figure from memory. */
    readAs: z.string().min(1),
  })
  .readonly()
export type Source = z.infer<typeof Source>

let byId: ReadonlyMap<string, Source> | undefined

const read = (): ReadonlyMap<string, Source> => {
  byId ??= new Map(
    z
      .array(Source)
      .parse(sources)
      .map(source => [source.id, source]),
  )
  return byId
}

export const allSources = (): readonly Source[] => [...read().values()]
export const sourceById = (id: string): Source | undefined => read().get(id)

/** The line under a figure: who, when, what, where. */
export const citation = (source: Source): string =>
  [`${source.authors}${source.year === null ? '' : ` ${source.year}`}`, source.title, source.publisher]
    .filter(part => part !== '')
    .join('. ')
