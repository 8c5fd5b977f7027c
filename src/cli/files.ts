import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { basename, join, resolve } from 'node:path'
import { Trouble } from './command.ts'

const spreadsheet = /\.(csv|tsv|txt|xlsx)$/i

/** The spreadsheets named, and those in the folders named; what a spreadsheet program keeps open beside them is not one. */
export const spreadsheetsAt = (paths: readonly string[]): { name: string; bytes: Uint8Array }[] => {
  const files = paths.flatMap(path => {
    if (!existsSync(path)) throw new Trouble(`There is no file or folder ${resolve(path)}.`)
    if (!statSync(path).isDirectory()) return [path]
    return readdirSync(path)
      .filter(name => spreadsheet.test(name) && !/^(\.|~\$)/.test(name))
      .sort()
      .map(name => join(path, name))
  })
  if (files.length === 0) throw new Trouble('No spreadsheet is there: .csv, .tsv, .txt or .xlsx.')
  return files.map(file => ({ name: basename(file), bytes: readFileSync(file) }))
}

/** Writes a file that must not be there yet. */
export const saveNew = (path: string, content: string | Uint8Array): void => {
  try {
    writeFileSync(path, content, { flag: 'wx' })
  } catch (problem) {
    if ((problem as NodeJS.ErrnoException).code === 'EEXIST')
      throw new Trouble(`${resolve(path)} is there already. Choose another folder, or move it away.`)
    throw problem
  }
}
