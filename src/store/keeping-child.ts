/**
 * A process for tests: reads the state kept in a folder, keeps it anew without end, and waits to be killed. Each time
 * the log is one entry longer, so that the state kept is not the same as before.
 */
import { writeSync } from 'node:fs'
import { openLog } from './log.ts'

const [folder = ''] = process.argv.slice(2)
const log = await openLog(folder)
const kept = log.loadSnapshot()
if (kept === null) throw new Error('no state is kept')
writeSync(1, 'open\n')
for (let seq = 1; ; seq = (seq % log.lastSeq()) + 1) log.saveSnapshot(seq, kept.nursery)
