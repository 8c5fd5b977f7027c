import { useEffect, useRef, useState } from 'react'

const REST_MS = 500

/**
 * What is typed and stands in the address too: written there once the typing rests or its field is left, not at every key.
 * What the address comes to say otherwise, by a link or by going back, holds.
 */
export function useTypedLink(
  inAddress: string,
  write: (said: string) => void,
): readonly [said: string, type: (said: string) => void, settle: () => void] {
  const [typed, setTyped] = useState<string | null>(null)
  const written = useRef<string | null>(null)
  useEffect(() => {
    if (inAddress !== written.current) setTyped(null)
    written.current = null
  }, [inAddress])
  const settle = () => {
    if (typed === null || typed === inAddress) return
    written.current = typed
    write(typed)
  }
  useEffect(() => {
    const timer = setTimeout(settle, REST_MS)
    return () => clearTimeout(timer)
  })
  return [typed ?? inAddress, setTyped, settle]
}
