/**
 * A process for tests: appends to the log in a folder without end, says each entry that the log has acknowledged on its
 * standard output, and waits to be killed. It begins by sending its last batch again, as a phone does that heard no answer.
 */
import { writeSync } from 'node:fs'
import { openLog } from './log.ts'
import { toldEntry } from './told-entry.ts'

const [folder = '', run = '0'] = process.argv.slice(2)
const say = (line: string) => writeSync(1, `${line}\n`)

try {
  const log = await openLog(folder)
  say('open')
  const receivedAt = '2026-05-04T06:30:00.000Z'
  const size = 1 + (Number(run) % 17)
  for (let number = 0; ; number += size) {
    const batch = Array.from({ length: size }, (_, i) => toldEntry(Number(run), number + i))
    const { accepted } = log.append(batch, receivedAt)
    // Only what append has returned is acknowledged.
    say(`kept ${accepted.map(({ id }) => id).join(' ')}`)
    if (number % 5 === 0) say(`known ${log.append(batch, receivedAt).known.length}`)
  }
} catch (error) {
  say(`trouble ${(error as { kind?: string }).kind ?? String(error)}`)
  process.exitCode = 1
}
