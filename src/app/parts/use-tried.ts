import { useRouter, useSearch } from '@tanstack/react-router'
import { useTypedLink } from './use-typed-link.ts'

/**
 * What is tried in what lies open over the page, as text: it stands in the address once it rests, so that a link reopens it,
 * and goes from there with what was open.
 * @param asItIs what nothing is tried with
 */
export function useTried(asItIs: string): readonly [tried: string, put: (tried: string) => void] {
  const router = useRouter()
  const { tries = asItIs } = useSearch({ strict: false })
  const [tried, put] = useTypedLink(
    tries,
    said =>
      void router.navigate({
        to: '.',
        search: ((was: object) => ({ ...was, tries: said === asItIs ? undefined : said })) as never,
        replace: true,
        resetScroll: false,
        state: was => was,
      }),
  )
  return [tried, put]
}
