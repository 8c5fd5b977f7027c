/** `npm start [-- --port N --data FOLDER --no-open]`: sets up what is missing, then serves the app on this computer. */
import { prepare, runProgram } from './setup/prepare.js'
import { orSayTrouble } from './setup/trouble.js'

await orSayTrouble(async () => {
  await prepare()
  await runProgram(['serve', ...process.argv.slice(2)])
})
