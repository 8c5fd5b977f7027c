import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { useFormat } from '../../text/use-format.tsx'
import type { Asking } from './asking.ts'
import { BatchDrill } from './batch-drill.tsx'

/** A batch's life as a strip of steps: as tall as the number that came in, narrowing by what was lost. */
export function LifeStrip({
  view,
  onAsk,
}: {
  readonly view: BatchView
  readonly onAsk: (asking: Asking) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const most = Math.max(1, view.row.number, ...view.steps.map(({ entered }) => entered))
  const portionsIn = (step: string) =>
    view.portions.filter(portion => portion.step === step && portion.number > 0)
  return (
    <section aria-labelledby="life" className="sheet">
      <h2 id="life">{t('batch.life')}</h2>
      <ol className="life">
        {view.steps.map(step => {
          const here = portionsIn(step.step)
          const now = here.reduce((sum, { number }) => sum + number, 0)
          const state = now > 0 ? 'now' : step.entered > 0 ? 'passed' : 'ahead'
          const entered = step.entered / most
          const out = Math.max(0, step.entered - step.lost) / most
          return (
            <li key={step.step} data-state={state}>
              <svg className="life-band" viewBox="0 0 100 60" preserveAspectRatio="none" aria-hidden="true">
                {step.entered > 0 ? (
                  <path
                    d={`M0 ${30 - 29 * entered}L100 ${30 - 29 * out}V${30 + 29 * out}L0 ${30 + 29 * entered}Z`}
                  />
                ) : (
                  <path d="M0 30H100" className="life-ahead" />
                )}
              </svg>
              <p className="strong">{step.name}</p>
              <p className="small soft">{t(`trade.place.${step.place}`)}</p>
              {step.entered > 0 && (
                <p className="small">
                  {(['entered', 'left', 'lost'] as const).map(did => (
                    <span key={did} className="life-number">
                      <BatchDrill
                        number={`${did} ${step.step}`}
                        says={t(`batch.stepDid.${did}`, { number: format.number(step[did]) })}
                        onAsk={onAsk}
                      />
                    </span>
                  ))}
                </p>
              )}
              {now > 0 ? (
                <p className="life-now">
                  {t('batch.stepNow', { count: now, shown: format.number(now) })}
                  <span className="small soft">
                    {' '}
                    {format.list(
                      here.map(({ bench, since }) =>
                        `${names.bench(bench)} ${t('batch.stepSince', { day: format.day(since) })}`.trim(),
                      ),
                    )}
                  </span>
                </p>
              ) : (
                <p className="small soft">{t(state === 'ahead' ? 'batch.stepAhead' : 'batch.stepDone')}</p>
              )}
            </li>
          )
        })}
      </ol>
    </section>
  )
}
