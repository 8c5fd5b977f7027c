import type { TextFact } from '../../../trade/facts/index.ts'
import { Given } from '../../parts/given.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** What is said of a fruit in words, with where it comes from. */
export function Statement({
  said,
  sources,
}: {
  readonly said: TextFact
  readonly sources: readonly string[]
}) {
  const format = useFormat()
  return (
    <p>
      <Given says={format.sentence(said.text)} />{' '}
      <span className="soft small">
        <Given says={said.basis} />
        {said.sources.length > 0 &&
          ` [${format.list(said.sources.map(id => format.number(sources.indexOf(id) + 1)))}]`}
      </span>
    </p>
  )
}
