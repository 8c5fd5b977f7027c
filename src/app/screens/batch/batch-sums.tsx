import { useTranslation } from 'react-i18next'
import { BATCH_SUMS, type BatchView } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import { useTerm } from '../../text/use-term.ts'
import type { Asking } from './asking.ts'
import { BatchDrill } from './batch-drill.tsx'

/** The first of the sums say what came in; the rest add up to as many. */
const CAME = 4

/** Where the plants came from and where they are, each number with its entries; and what is known of their size. */
export function BatchSums({
  view,
  onAsk,
}: {
  readonly view: BatchView
  readonly onAsk: (asking: Asking) => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const names = useNames()
  const tell = useTell()
  const list = (sums: readonly (typeof BATCH_SUMS)[number][]) => (
    <ul>
      {sums
        .filter(sum => view.sums[sum] > 0)
        .map(sum => (
          <li key={sum}>
            <BatchDrill
              number={sum}
              says={t(`batch.sums.${sum}`, { number: format.number(view.sums[sum]) })}
              onAsk={onAsk}
            />
            {sum === 'finished' && (
              <span className="soft small">
                {' '}
                {format.list(
                  view.finished.map(({ bench, grade, number }) =>
                    [format.number(number), grade, names.bench(bench)].filter(Boolean).join(' '),
                  ),
                )}
              </span>
            )}
          </li>
        ))}
    </ul>
  )
  return (
    <section className="sheet batch-sums" aria-labelledby="sums">
      <h2 id="sums">{t('batch.sums.title')}</h2>
      <div className="batch-sums-sides">
        {list(BATCH_SUMS.slice(0, CAME))}
        {list(BATCH_SUMS.slice(CAME))}
      </div>
      <h3>{t('batch.stepByStep')}</h3>
      <ul>
        {view.steps
          .filter(({ entered }) => entered > 0)
          .map(step => (
            <li key={step.step}>
              {term(step.name)}
              {': '}
              {(['entered', 'left', 'lost'] as const).map(did => (
                <span key={did} className="sum-of-step">
                  <BatchDrill
                    number={`${did} ${step.step}`}
                    says={t(`batch.stepDid.${did}`, { number: format.number(step[did]) })}
                    onAsk={onAsk}
                  />
                </span>
              ))}
            </li>
          ))}
      </ul>
      {view.sizes.length > 0 && (
        <>
          <h3>{t('batch.sizes')}</h3>
          <ul>
            {view.sizes.slice(0, 3).map(({ entry, on, says }) => (
              <li key={entry}>
                {tell(says)} <span className="soft small">{format.fullDay(on)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}
