import { useEffect, useState } from 'react'

const REST_MS = 300

/** A value once it has rested for a moment, so that nothing is asked at every letter or all along a drag; null until then. */
export function useRested<T>(value: T): T | null {
  const [rested, setRested] = useState<T | null>(null)
  const said = JSON.stringify(value)
  useEffect(() => {
    const timer = setTimeout(() => setRested(JSON.parse(said) as T), REST_MS)
    return () => clearTimeout(timer)
  }, [said])
  return rested
}
