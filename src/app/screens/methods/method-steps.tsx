import { useRef } from 'react'
import { useTranslation } from 'react-i18next'
import type { Drawing, GuideStep } from '../../../trade/guides/index.ts'
import { Given } from '../../parts/given.tsx'
import { CutLegend } from '../../pictures/cuts/cut-legend.tsx'
import { CutPicture } from '../../pictures/cuts/cut-picture.tsx'
import { SaveMenu } from '../../pictures/frame/save-menu.tsx'
import { useFormat } from '../../text/use-format.tsx'

/** The moves of the hands, each with its drawing, what to look at, and why. */
export function MethodSteps({ steps }: { readonly steps: readonly GuideStep[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  return (
    <section className="stack">
      <div>
        <h2>{t('methods.steps.title')}</h2>
        <p className="soft small">{t('methods.steps.says')}</p>
      </div>
      <CutLegend of={steps.map(({ drawing }) => drawing)} />
      <ol className="method-steps">
        {steps.map(({ drawing, act, look, why }, index) => (
          <li key={drawing} className="sheet">
            <SavedCut of={drawing} />
            <div>
              <h3>
                <span className="step-number">
                  <span className="unseen">
                    {t('methods.steps.number', { shown: format.number(index + 1) })}
                  </span>
                  <span aria-hidden="true">{format.number(index + 1)}</span>
                </span>
                <Given says={act} />
              </h3>
              <p>
                <strong>{t('methods.steps.look')}</strong> <Given says={look} />
              </p>
              <p className="small">
                <strong>{t('methods.steps.why')}</strong> <Given says={why} />
              </p>
            </div>
          </li>
        ))}
      </ol>
    </section>
  )
}

/** A drawing, and a way to take it along. */
function SavedCut({ of }: { readonly of: Drawing }) {
  const { t } = useTranslation()
  const place = useRef<HTMLDivElement>(null)
  return (
    <div ref={place} className="step-cut">
      <CutPicture of={of} />
      <SaveMenu
        title={t(`methods.drawn.${of}`)}
        drawing={() => place.current?.querySelector('svg') ?? null}
        scale={6}
      />
    </div>
  )
}
