/** A failure that people can mend: its message says what is wrong and what to do. Anything else is a fault of ours. */
export class Trouble extends Error {}

/** Says on standard error what is being done: standard output is kept for data. */
export function say(/** @type {string} */ text) {
  process.stderr.write(`${text}\n`)
}

/** Whether a tool's words mean that the network, or the registry behind it, cannot be reached. */
export function isNetworkMissing(/** @type {string} */ output) {
  return /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|EIDLETIMEOUT|ENOTCACHED/.test(
    output,
  )
}

/**
 * What people should read when a tool of the set-up has failed.
 * @param {string} doing what was being done, as "Installing the libraries"
 * @param {string} output what the tool said
 * @returns {Trouble}
 */
export function troubleFrom(doing, output) {
  if (/ENOSPC|no space left/i.test(output)) {
    return new Trouble(`${doing} failed: the disk is full. Free about 1 GB and run the same command again.`)
  }
  if (isNetworkMissing(output)) {
    return new Trouble(
      `${doing} failed: the package registry cannot be reached. Connect to the internet (or set npm's proxy) and ` +
        'run the same command again. The network is needed only for this step.',
    )
  }
  if (/EACCES|EPERM|EROFS/.test(output)) {
    return new Trouble(`${doing} failed: this folder may not be written to.\n\n${output.trim()}`)
  }
  return new Trouble(`${doing} failed:\n\n${output.trim()}`)
}

/**
 * Runs a command's work; a failure that people can mend is said in plain words, anything else with its trace.
 * @param {() => Promise<void>} work
 */
export async function orSayTrouble(work) {
  try {
    await work()
  } catch (error) {
    const trouble =
      error instanceof Error && 'code' in error && error.code === 'ENOSPC'
        ? troubleFrom('Writing', 'ENOSPC')
        : error
    say(
      trouble instanceof Trouble
        ? `\n${trouble.message}`
        : String(error instanceof Error ? error.stack : error),
    )
    process.exitCode = 1
  }
}
