import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BenchId } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { useDone } from '../../parts/done.tsx'
import { Field } from '../../parts/field.tsx'
import { HoldList } from '../../parts/hold-list.tsx'
import { Leaf } from '../../parts/leaf.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** What can be done with the bench that is looked at: count it, or stop what stands on it. */
export function BenchDeeds({ bench }: { readonly bench: BenchId }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { data: stand } = useQuery(look.benchStand(bench))
  const [isHolding, setHolding] = useState(false)
  const holds = stand?.holds ?? []
  return (
    <div className="stack">
      <div className="row">
        <Link to="/benches/$bench/count" params={{ bench }} className="deed">
          {t('benches.count')}
        </Link>
        {holds.length === 0 && (
          <Button className="plain" onPress={() => setHolding(true)}>
            {t('benches.hold')}
          </Button>
        )}
        {stand !== undefined && (
          <span className="soft small">
            {stand.lastCounted === null
              ? t('benches.counting.never')
              : t('benches.counting.last', { day: format.fullDay(stand.lastCounted) })}
          </span>
        )}
      </div>
      {holds.length > 0 && <HoldList holds={holds} />}
      {isHolding && <HoldBench bench={bench} onClose={() => setHolding(false)} />}
    </div>
  )
}

function HoldBench({ bench, onClose }: { readonly bench: BenchId; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const names = useNames()
  const done = useDone()
  const [why, setWhy] = useState('')
  const [isShort, setShort] = useState(false)
  const name = names.bench(bench)
  const keep = async () => {
    if (why.trim() === '') return setShort(true)
    const said = await say([{ kind: 'hold-placed/1', on: { what: 'bench', bench }, why: why.trim() }])
    if (!said.kept) return
    done.tell(t('benches.held', { name }), said)
    onClose()
  }
  return (
    <Leaf title={`${name}: ${t('benches.hold')}`} isOpen onClose={onClose}>
      <form
        className="stack"
        onSubmit={event => {
          event.preventDefault()
          void keep()
        }}
      >
        <Field
          label={t('benches.holdWhy')}
          value={why}
          onChange={setWhy}
          wrong={isShort && why.trim() === '' ? t('holds.need') : undefined}
        />
        <Button type="submit" className="deed large">
          {t('common.keep')}
        </Button>
      </form>
    </Leaf>
  )
}
