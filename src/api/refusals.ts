import { inEnglish, type Part, phrase } from '../trade/index.ts'
import type { Refusal } from './shapes.ts'

interface Words {
  readonly what: string
  readonly where: string
  readonly mend: string
}

/** Why the server may say no, by a code that stays: what is wrong, where, and how to mend it. */
export const REFUSALS = {
  'does-not-fit': {
    what: 'The request does not fit',
    where: '{where}',
    mend: 'Correct it as /api/openapi.json describes and send it again.',
  },
  'not-this-computer': {
    what: 'Only pages of this computer may ask',
    where: 'Host or Origin header',
    mend: 'Open the app by the address that was printed at the start.',
  },
  'nothing-here': {
    what: 'Nothing is here',
    where: '{path}',
    mend: 'See /api/openapi.json for what there is.',
  },
  'log-trouble': {
    what: 'The log could not be written or read',
    where: 'log on the disk of this computer',
    mend: '{trouble}',
  },
  failed: {
    what: 'The server failed',
    where: '{path}',
    mend: 'Try again; if it stays, keep this message:',
  },
  'odd-answer': {
    what: 'The server answered {status}',
    where: '{path}',
    mend: 'Try again, or look at the server’s messages.',
  },
  'backup-not-put-back': {
    what: 'The nursery is as it was: the backup was not put back',
    where: 'backup',
    mend: '{trouble}',
  },
  'none-kept': {
    what: 'No such nursery is kept',
    where: '{name}',
    mend: 'See /api/kept for those that are, or choose a backup file.',
  },
  'not-invented': {
    what: 'This is not the invented nursery',
    where: 'nursery',
    mend: 'It is your own already, and is left as it is. An empty one is begun in another folder: --data FOLDER --empty.',
  },
  'not-empty': {
    what: 'The nursery has batches or orders already',
    where: 'nursery',
    mend: 'The invented one is opened in an empty nursery, or in another folder: --data FOLDER.',
  },
  'not-brought-in': {
    what: 'Nothing is known to have been brought in so',
    where: '{id}',
    mend: 'See /api/exchange/brought for what was, or strike the entries one by one.',
  },
  'no-such-batch': {
    what: 'No such batch',
    where: 'batch {id}',
    mend: 'Look for it by name in the list of batches.',
  },
  'no-such-mother': {
    what: 'No such mother tree',
    where: 'mother tree {id}',
    mend: 'Look for it by name in the list.',
  },
  'no-such-bench': {
    what: 'No such bench',
    where: 'bench {id}',
    mend: 'Look for it by name in the list.',
  },
  'no-such-protocol': {
    what: 'No such protocol',
    where: 'protocol {id}',
    mend: 'Look for it in the settings.',
  },
  'no-such-kind': {
    what: 'No such kind',
    where: 'kind {id}',
    mend: 'Choose one of the nursery’s kinds.',
  },
  'no-such-order': { what: 'No such order', where: 'order {id}', mend: 'Place it first.' },
  'no-such-start': {
    what: 'No such start is planned',
    where: 'start {id}',
    mend: 'Look at the plan again.',
  },
  'no-plan': { what: 'No plan is made yet', where: 'season plan', mend: 'Plan the season first.' },
  'planning-already': {
    what: 'A plan is being made already',
    where: 'planning job',
    mend: 'Wait for it, or stop it first.',
  },
  planning: {
    what: 'A plan is being made',
    where: 'planning job',
    mend: 'Ask again when it is ready, or stop it first.',
  },
  'not-planning': { what: 'No plan is being made', where: 'planning job', mend: 'Begin one first.' },
  'not-the-latest-plan': {
    what: 'This plan is no longer the latest',
    where: 'plan {id}',
    mend: 'Look at the new plan and accept that.',
  },
  'given-up': {
    what: 'The question was given up',
    where: 'what-if',
    mend: 'A later one was asked instead.',
  },
  'no-answer': { what: 'There is no answer', where: 'what-if', mend: 'Ask again; the reason:' },
  'picture-too-large': {
    what: 'The picture is too large',
    where: 'picture',
    mend: 'Send one of at most 5 MB.',
  },
  'no-photograph': { what: 'This is no photograph', where: 'picture', mend: 'Send a JPEG.' },
  'picture-not-whole': {
    what: 'The picture did not arrive whole',
    where: '{file}',
    mend: 'Send it again, named by the SHA-256 of its bytes.',
  },
  'no-such-picture': {
    what: 'This picture is not here',
    where: '{file}',
    mend: 'It may still wait on the device that took it.',
  },
  'not-an-entry': {
    what: 'The entry is not as it should be',
    where: '{field}',
    mend: 'Correct this field and send it again; nothing of this entry was kept.',
  },
  'id-taken': {
    what: 'Another entry has this id already and says something else',
    where: 'id',
    mend: 'Keep the first one, strike it if it is wrong, and say the new one under an id of its own.',
  },
  'files-gone': {
    what: 'These files are no longer kept',
    where: 'reading {id}',
    mend: 'Choose them once more and read them again.',
  },
  'files-too-large': {
    what: 'The files are too large',
    where: 'files',
    mend: 'Send at most 50 MB at a time.',
  },
  'no-file': { what: 'No file was sent', where: 'files', mend: 'Choose a spreadsheet: CSV or .xlsx.' },
  'mapping-unread': {
    what: 'What is said of the sheets cannot be read',
    where: 'mapping',
    mend: 'Send it as /api/openapi.json describes.',
  },
  'nothing-to-write': {
    what: 'There is nothing to write',
    where: 'reading {id}',
    mend: 'The record has all of it already, or no row can be used.',
  },
  'question-open': { what: 'A question is open', where: '{sheet}', mend: 'Answer it, then write:' },
  'no-such-sheet': {
    what: 'There is no such sheet',
    where: '{file}',
    mend: 'See /api/exchange/sheets for those there are.',
  },
  'no-such-table': {
    what: 'There is no such table',
    where: '{file}',
    mend: 'See datapackage.json for those there are.',
  },
} as const satisfies Readonly<Record<string, Words>>

export type RefusalCode = keyof typeof REFUSALS

type Places<Said extends string> = Said extends `${string}{${infer Place}}${infer Rest}`
  ? Place | Places<Rest>
  : never
type PartsOf<Code extends RefusalCode> = Readonly<Record<Places<(typeof REFUSALS)[Code][keyof Words]>, Part>>

/** @param detail what a library, the disk or the sheets say themselves, in English */
export function refusal<Code extends RefusalCode>(code: Code, of: PartsOf<Code>, detail?: string): Refusal {
  const { what, where, mend }: Words = REFUSALS[code]
  const said = (words: string) => inEnglish(phrase(words, of))
  return {
    code,
    of,
    what: said(what),
    where: said(where),
    mend: detail === undefined ? said(mend) : `${said(mend)} ${detail}`,
    ...(detail !== undefined && { detail }),
  }
}

/** The words of a code; null for one of a server newer than these pages. */
export const wordsOf = (code: string): Words | null =>
  Object.hasOwn(REFUSALS, code) ? REFUSALS[code as RefusalCode] : null
