import type { OpenAPIHono } from '@hono/zod-openapi'
import { type EmptySheet, Mapping, type Reading, refusal, type SheetField } from '../../api/index.ts'
import { routes } from '../../api/routes/index.ts'
import {
  emptySheet,
  emptySheetForms,
  type Field,
  MAPPING_KEY,
  type NamedBytes,
  type NurseryReading,
  packageFile,
  readNursery,
  rememberBrought,
  sheetForms,
} from '../../exchange/index.ts'
import { Entry } from '../../record/index.ts'
import { PersonId, phrase } from '../../trade/index.ts'
import { bodyOf, download } from '../download.ts'
import type { Served } from '../served.ts'

const MOST_BYTES = 50 * 1024 * 1024
/** Readings that are looked at and not yet accepted; the oldest goes. */
const MOST_KEPT = 8

interface Kept {
  readonly files: readonly NamedBytes[]
  readonly said: Mapping
}

const fieldsOf = (fields: readonly Field[]): SheetField[] =>
  fields.map(({ id, name, says, needed }) => ({ id, name, says, needed: needed === true }))

const fieldsByKind: Reading['fields'] = Object.fromEntries(
  sheetForms.map(form => [form.kind, fieldsOf(form.fields)]),
)

const shown = (id: string, { told: _, mapping, ...reading }: NurseryReading): Reading => ({
  id,
  ...reading,
  mapping: mapping as Mapping,
  fields: fieldsByKind,
})

/** Files in, looked at before anything of them is written; files out. */
export const exchangeRoutes = (app: OpenAPIHono, { memory, underWay, today, now, newId }: Served): void => {
  const kept = new Map<string, Kept>()
  const remembered = (): Mapping => memory.log.recall<Mapping>(MAPPING_KEY) ?? {}
  /** Others are answered in between, and it ends when nobody waits for it any more. */
  const readingOf = ({ files, said }: Kept, signal: AbortSignal) =>
    readNursery({
      files,
      said,
      remembered: remembered(),
      nursery: memory.nursery(),
      today: today(),
      tell: async share => {
        underWay.tell('reading')(share, phrase('Reading the sheets.'))
        await new Promise(done => setImmediate(done))
        signal.throwIfAborted()
      },
    })
  const gone = (id: string) => refusal('files-gone', { id })

  app.openapi(routes.readFiles, async c => {
    if (Number(c.req.header('content-length') ?? 0) > MOST_BYTES)
      return c.json(refusal('files-too-large', {}), 413)
    const form = await c.req.parseBody({ all: true })
    const sent = [form.files ?? []].flat().filter(file => file instanceof File)
    if (sent.length === 0) return c.json(refusal('no-file', {}), 400)
    const said = mappingIn(form.mapping)
    if (said === null) return c.json(refusal('mapping-unread', {}), 400)
    const files = await Promise.all(
      sent.map(async file => ({ name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) })),
    )
    const id = newId()
    kept.set(id, { files, said })
    for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old)
    return c.json(shown(id, await readingOf({ files, said }, c.req.raw.signal)), 200)
  })

  app.openapi(routes.readAgain, async c => {
    const { id } = c.req.valid('param')
    const before = kept.get(id)
    if (before === undefined) return c.json(gone(id), 404)
    const now = { files: before.files, said: c.req.valid('json').mapping }
    kept.set(id, now)
    return c.json(shown(id, await readingOf(now, c.req.raw.signal)), 200)
  })

  app.openapi(routes.acceptReading, async c => {
    const { reading: id, by } = c.req.valid('json')
    const one = kept.get(id)
    if (one === undefined) return c.json(gone(id), 404)
    // Taken out first, so that a second tap finds nothing to write.
    kept.delete(id)
    const reading = await readingOf(one, c.req.raw.signal).catch(problem => {
      kept.set(id, one)
      throw problem
    })
    if (!reading.ready) {
      kept.set(id, one)
      const open = reading.questions.find(({ needed, answer }) => needed && answer === null)
      return c.json(
        open === undefined
          ? refusal('nothing-to-write', { id })
          : refusal('question-open', { sheet: open.sheet }, open.asks),
        409,
      )
    }
    const person = by === null ? null : PersonId.parse(by)
    const entries = reading.told.map(
      ({ on, body }) =>
        Entry.parse({ id: newId(), on, at: null, by: person, device: 'office', body }) as Entry,
    )
    const at = now()
    const { accepted } = memory.append(entries, at)
    rememberBrought(memory.log, { id, at, by, files: one.files, written: accepted })
    memory.log.remember(MAPPING_KEY, { ...remembered(), ...reading.mapping })
    const byKind = reading.would.map(({ kind, number }) => ({ kind, number }))
    return c.json({ written: accepted.length, byKind, throughSeq: memory.throughSeq(), brought: id }, 200)
  })

  app.openapi(routes.emptySheets, c =>
    c.json(
      emptySheetForms.map(
        ({ kind, name, says, fields }): EmptySheet => ({ kind, name, says, fields: fieldsOf(fields) }),
      ),
      200,
    ),
  )

  app.openapi(routes.emptySheet, async c => {
    const { file } = c.req.valid('param')
    const saved = await emptySheet(file)
    if (saved === null) return c.json(refusal('no-such-sheet', { file }), 404)
    return c.body(bodyOf(saved.bytes), 200, download(saved.name, saved.type))
  })

  const allEntries = () => memory.after(0, Number.MAX_SAFE_INTEGER)

  app.openapi(routes.exportEntries, c =>
    c.body(
      packageFile('entries.jsonl', memory.nursery(), allEntries(), now()) ?? '',
      200,
      download('entries.jsonl', 'application/x-ndjson'),
    ),
  )

  app.openapi(routes.exportPackage, c => {
    const { file } = c.req.valid('param')
    const text = packageFile(file, memory.nursery(), allEntries(), now())
    if (text === null) return c.json(refusal('no-such-table', { file }), 404)
    const type = file.endsWith('.json')
      ? 'application/json'
      : file.endsWith('.csv')
        ? 'text/csv; charset=utf-8'
        : 'application/x-ndjson'
    return c.body(text, 200, download(file, type))
  })
}

function mappingIn(said: unknown): Mapping | null {
  if (said === undefined || said === '') return {}
  try {
    return Mapping.parse(JSON.parse(String(said)))
  } catch {
    return null
  }
}
