#!/usr/bin/env node
/** `npm run budstick -- COMMAND …`: the same program without a browser. Try `npm run budstick -- --help`. */
import { prepare, runProgram } from './setup/prepare.js'
import { orSayTrouble } from './setup/trouble.js'

await orSayTrouble(async () => {
  await prepare()
  await runProgram(process.argv.slice(2))
})
