import { DatabaseSync } from '@photostructure/sqlite'
import {
  type CompiledQuery,
  DummyDriver,
  Kysely,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
} from 'kysely'
import { calling } from './between-calls.ts'
import { toTrouble } from './log-trouble.ts'

/**
 * The one place that knows which SQLite this is. `DatabaseSync` has the form of Node's own `node:sqlite`, so that
 * the import is all that changes when every supported Node has it.
 */
export interface Sqlite {
  readonly all: <Row>(query: CompiledQuery<Row>) => Row[]
  readonly iterate: <Row>(query: CompiledQuery<Row>) => IterableIterator<Row>
  readonly run: (query: CompiledQuery<unknown>) => void
  readonly exec: (sql: string) => void
  readonly pragma: (name: string) => string | number | null
  /** Sees the file as it is now throughout, whatever others write meanwhile. */
  readonly reading: <T>(work: () => T) => T
  /** All of it or nothing; begins by taking the right to write. */
  readonly inTransaction: <T>(work: () => T) => T
  readonly close: () => void
}

/** Builds typed queries; they run through `Sqlite`. */
export const queriesOf = <Tables>(): Kysely<Tables> =>
  new Kysely<Tables>({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => new DummyDriver(),
      createIntrospector: db => new SqliteIntrospector(db),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  })

type Value = string | number | bigint | null | Uint8Array

/** How long to wait for another program's transaction to end. */
const patienceMilliseconds = 5_000

export function openSqlite(
  path: string,
  how: { readonly readOnly?: boolean; readonly patience?: number } = {},
): Sqlite {
  const guard = <T>(work: () => T): T => {
    try {
      return work()
    } catch (error) {
      throw toTrouble(error, path)
    }
  }
  const call = <T>(work: () => T): T => guard(() => calling(work))
  const db = call(
    () =>
      new DatabaseSync(path, {
        readOnly: how.readOnly ?? false,
        timeout: how.patience ?? patienceMilliseconds,
        enableForeignKeyConstraints: true,
      }),
  )
  const exec = (sql: string): void => call(() => db.exec(sql))
  const transaction = <T>(begin: string, work: () => T): T => {
    exec(begin)
    try {
      const result = work()
      exec('COMMIT')
      return result
    } catch (error) {
      if (db.isTransaction) exec('ROLLBACK')
      throw error
    }
  }
  const parametersOf = (query: CompiledQuery<unknown>) => query.parameters as Value[]
  return {
    all: query => call(() => db.prepare(query.sql).all(...parametersOf(query)) as never[]),
    *iterate(query) {
      const rows = call(() => db.prepare(query.sql).iterate(...parametersOf(query)))
      try {
        for (let next = call(() => rows.next()); !next.done; next = call(() => rows.next()))
          yield next.value as never
      } finally {
        call(() => rows.return?.())
      }
    },
    run: query => call(() => void db.prepare(query.sql).run(...parametersOf(query))),
    exec,
    pragma: name =>
      call(() => {
        const row = db.prepare(`PRAGMA ${name}`).get() as Record<string, string | number> | undefined
        return (row && Object.values(row)[0]) ?? null
      }),
    reading: work => guard(() => transaction('BEGIN', work)),
    inTransaction: work => guard(() => transaction('BEGIN IMMEDIATE', work)),
    close: () => call(() => db.close()),
  }
}
