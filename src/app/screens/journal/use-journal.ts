import { useInfiniteQuery } from '@tanstack/react-query'
import { useEffect, useRef } from 'react'
import { client } from '../../data/client.ts'

/** Pages that are looked through for words on their own; from there on at a press. */
const PAGES_AT_ONCE = 20

/**
 * What was said, page by page as its end comes in sight. All of it follows what is said meanwhile; what was found by words is not
 * looked for again, for that may mean the whole log.
 */
export const useJournal = (find: string) => {
  const isWhole = find === ''
  const query = useInfiniteQuery({
    queryKey: ['journal', find],
    queryFn: ({ pageParam }) => client.journal({ before: pageParam, find }),
    initialPageParam: undefined as number | undefined,
    getNextPageParam: ({ before }) => before ?? undefined,
    enabled: isWhole,
    ...(!isWhole && { gcTime: 0, meta: { kept: false } }),
  })
  const { data, isFetching, hasNextPage, fetchNextPage, isError } = query
  const end = useRef<HTMLDivElement>(null)
  const pages = data?.pages.length ?? 0
  useEffect(() => {
    if (!isWhole && pages === 0 && !isError) void fetchNextPage()
  }, [isWhole, pages, isError, fetchNextPage])
  useEffect(() => {
    if (isFetching || !hasNextPage || isError || (!isWhole && pages % PAGES_AT_ONCE === 0)) return
    const watch = new IntersectionObserver(seen => {
      if (seen.some(({ isIntersecting }) => isIntersecting)) void fetchNextPage()
    })
    if (end.current !== null) watch.observe(end.current)
    return () => watch.disconnect()
  }, [isWhole, pages, isFetching, hasNextPage, isError, fetchNextPage])
  return { query, end }
}
