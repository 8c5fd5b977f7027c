import { useQuery } from '@tanstack/react-query'
import { Link, useNavigate } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import type { Slumped } from '../../../api/index.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { PointsPicture } from '../../pictures/rate-points/points-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { useSaySlump } from './use-say-slump.ts'

/** In every other view: how many takes do worse than before, and the way to them. */
export function SlumpsNamed() {
  const { t } = useTranslation()
  const format = useFormat()
  const saySlump = useSaySlump()
  const { data } = useQuery(look.needsLook())
  const [first] = data?.slumps ?? []
  if (data === undefined || first === undefined) return null
  const count = data.slumps.length
  return (
    <p>
      <Link to="/rates" search={{ view: 'slumps' }} className="warn">
        {t('rates.slumps.named', { count, shown: format.number(count), first: saySlump.of(first) })}
      </Link>
    </p>
  )
}

/** Takes that do worse than before: whose, since when, and each batch that says so on the range that was expected of it. */
export function Slumps() {
  const { t } = useTranslation()
  const query = useQuery(look.needsLook())
  return (
    <Asked query={query} what={t('rates.view.slumps')}>
      {({ slumps }) => (
        <div className="stack">
          {slumps.length === 0 && <p className="soft">{t('rates.slumps.none')}</p>}
          {slumps.map(one => (
            <SlumpPicture key={JSON.stringify(one.of)} slump={one} />
          ))}
        </div>
      )}
    </Asked>
  )
}

function SlumpPicture({ slump }: { readonly slump: Slumped }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const saySlump = useSaySlump()
  const navigate = useNavigate()
  const { steps, of, batches } = slump
  const lanes = steps.map((one, at) => ({
    ...one,
    key: String(at),
    share: one.entered === 0 ? 0 : one.survived / one.entered,
    name:
      of.by === 'step'
        ? `${one.name}, ${one.kindName}`
        : `${one.name}, ${one.kindName}: ${term(one.stepName)}`,
    sign: 'own' as const,
    says: t('rates.slumps.batch', {
      survived: format.number(one.survived),
      entered: format.number(one.entered),
      expected: format.share(one.expectedShare),
    }),
  }))
  const percent = (share: number) => Math.round(1000 * share) / 10
  const fewer = new Set(steps.map(({ batch }) => batch)).size < batches
  return (
    <PointsPicture
      title={saySlump.of(slump)}
      says={fewer ? `${saySlump.says(slump)} ${t('rates.slumps.worst')}` : saySlump.says(slump)}
      lanes={lanes}
      onChoose={key => {
        const { batch } = steps[Number(key)]!
        void navigate({ to: '/batches/$batch', params: { batch } })
      }}
      numbers={() => ({
        columns: [
          t('rates.slumps.column.batch'),
          t('rates.column.entered'),
          t('rates.column.survived'),
          `${t('rates.column.rate')} %`,
          `${t('rates.slumps.column.expected')} %`,
          `${t('rates.column.low')} %`,
          `${t('rates.column.high')} %`,
        ],
        rows: lanes.map(one => [
          one.name,
          one.entered,
          one.survived,
          percent(one.share),
          percent(one.expectedShare),
          percent(one.low),
          percent(one.high),
        ]),
      })}
    />
  )
}
