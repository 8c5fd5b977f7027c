import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BenchId } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { useNames } from '../../data/use-names.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { HoldList } from '../../parts/hold-list.tsx'
import { useOpened } from '../../parts/use-opened.ts'
import { useFormat } from '../../text/use-format.tsx'

/** What can be done with the bench that is looked at: count it, or stop what stands on it. */
export function BenchDeeds({ bench }: { readonly bench: BenchId }) {
  const { t } = useTranslation()
  const format = useFormat()
  const { data: stand } = useQuery(look.benchStand(bench))
  const [opened, open] = useOpened()
  const holds = stand?.holds ?? []
  return (
    <div className="stack">
      <div className="row">
        <Link to="/benches/$bench/count" params={{ bench }} className="deed">
          {t('benches.count')}
        </Link>
        {holds.length === 0 && (
          <Button className="plain" onPress={() => open('hold')}>
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
      {opened === 'hold' && <HoldBench bench={bench} onClose={() => open(null)} />}
    </div>
  )
}

function HoldBench({ bench, onClose }: { readonly bench: BenchId; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const names = useNames()
  const [why, setWhy] = useState('')
  const name = names.bench(bench)
  return (
    <EntryForm
      title={`${name}: ${t('benches.hold')}`}
      bodies={
        why.trim() === '' ? null : [{ kind: 'hold-placed/1', on: { what: 'bench', bench }, why: why.trim() }]
      }
      need={t('holds.need')}
      told={t('benches.held', { name })}
      onClose={onClose}
    >
      <Field label={t('benches.holdWhy')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
