/** How a long way of bytes is watched and given up: `told` hears the share that is over, null where that is not known. */
export interface Carrying {
  readonly signal: AbortSignal
  readonly told: (share: number | null) => void
}

const givenUp = () => new DOMException('It was stopped.', 'AbortError')

/** Sends a body and hears how much of it is over, which `fetch` does not tell. */
export const sendCarried = (
  path: string,
  body: FormData | Blob,
  { signal, told }: Carrying,
): Promise<Response> =>
  new Promise((done, fail) => {
    const request = new XMLHttpRequest()
    request.open('POST', path)
    request.upload.onprogress = ({ loaded, total, lengthComputable }) =>
      told(lengthComputable ? loaded / total : null)
    // All is over: what comes next is the server's.
    request.upload.onload = () => told(null)
    request.onload = () => done(new Response(request.responseText, { status: request.status }))
    request.onerror = () => fail(new TypeError('No server answers.'))
    request.onabort = () => fail(givenUp())
    signal.addEventListener('abort', () => request.abort())
    if (signal.aborted) fail(givenUp())
    else request.send(body)
  })

/** Fetches a file, with the name that the server gives it, and hears how much of it is here. */
export const fetchCarried = async (
  path: string,
  { signal, told }: Carrying,
): Promise<{ readonly file: Blob; readonly name: string }> => {
  told(null)
  const answer = await fetch(path, { signal })
  if (!answer.ok || answer.body === null) throw new TypeError(`The server answered ${answer.status}.`)
  const all = Number(answer.headers.get('content-length') ?? 0)
  const parts: BlobPart[] = []
  let here = 0
  const reader = answer.body.getReader()
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    parts.push(next.value)
    here += next.value.length
    told(all > 0 ? here / all : null)
  }
  const [, name = path.split('/').at(-1)!] =
    /filename="([^"]+)"/.exec(answer.headers.get('content-disposition') ?? '') ?? []
  return { file: new Blob(parts), name }
}
