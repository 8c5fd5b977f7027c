import { useTranslation } from 'react-i18next'
import { benchFigures, type Guide, guideCautions, guideName } from '../../../trade/guides/index.ts'
import { markOfMethod, type Protocol } from '../../../trade/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { CutPicture } from '../../pictures/cuts/cut-picture.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './bench-card.css'
import { Given } from '../../parts/given.tsx'
import { useTerm } from '../../text/use-term.ts'
import { inUnits, measureWords } from './measure-words.ts'
import { ownMeasure } from './own-measure.ts'

const BLANKS = ['mother', 'batch', 'tray', 'number', 'name', 'date'] as const

/** A4 holds all on one side; A5 has the drawings in front, and figures, aftercare and lines to write on behind. */
export type Paper = 'A4' | 'A5'

/** One sheet for the bench: drawings with a line each, cautions, figures, aftercare and lines to write on. */
export function BenchCard({
  guide,
  protocols,
  paper,
}: {
  readonly guide: Guide
  readonly protocols: readonly Protocol[]
  readonly paper: Paper
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const { nursery } = useNames()
  const { method, needs, steps, aftercare, cautions } = guide
  return (
    <div className="bench-card" data-paper={paper} aria-hidden="true">
      <header>
        <Mark mark={markOfMethod(method)} named size={40} />
        <div>
          <p className="card-title">{guideName(method)}</p>
          <p>
            <b>{t('methods.needs.season')}:</b> <Given says={needs.season} />{' '}
            <b>{t('methods.needs.wood')}:</b> <Given says={needs.wood} />
            {needs.stock !== null && (
              <>
                {' '}
                <b>{t('methods.needs.stock')}:</b> <Given says={needs.stock} />
              </>
            )}{' '}
            <b>{t('methods.needs.tools')}:</b> <Given says={needs.tools.join('; ')} />.
          </p>
        </div>
        <p className="card-kind">
          {t('methods.card.kind')}
          <br />
          {nursery?.site?.name ?? ''}
        </p>
      </header>
      <ol className="card-steps" data-many={steps.length > 4 || undefined}>
        {steps.map(({ drawing, act, look }, index) => (
          <li key={drawing}>
            <CutPicture of={drawing} silent />
            <p>
              <b className="card-number">{format.number(index + 1)}</b>{' '}
              <b>
                <Given says={act} />
              </b>
            </p>
            <p>
              <Given says={look} />
            </p>
          </li>
        ))}
      </ol>
      <div className="card-foot">
        <section>
          <p className="card-head">{t('methods.card.key')}</p>
          <dl>
            {benchFigures(method).map(setting => {
              const { name, unit, figure } = inUnits(setting, format.units)
              const own = ownMeasure(protocols, setting.name)
              const shown = own === null ? figure : inUnits({ ...setting, figure: own }, format.units).figure
              return (
                <div key={name}>
                  <dt>
                    <Given says={name} />
                  </dt>
                  <dd>
                    {measureWords(shown, format.locale).range} <Given says={unit} />
                    <sup>
                      {own === null ? t(`methods.card.mark.${figure.basis}`) : t('methods.card.ownMark')}
                    </sup>
                  </dd>
                </div>
              )
            })}
          </dl>
        </section>
        <section>
          <p className="card-head">{t('methods.card.aftercare')}</p>
          <ul>
            {aftercare.map(({ fromWeek, toWeek, care }) => (
              <li key={fromWeek}>
                <b>{t('methods.card.wk', { from: fromWeek, to: toWeek })}</b> <Given says={care} />
              </li>
            ))}
          </ul>
        </section>
        <section>
          <p className="card-head">{t('methods.cautions.title')}</p>
          <ul>
            {cautions.map(caution => (
              <li key={caution}>{term(guideCautions[caution])}</li>
            ))}
          </ul>
        </section>
      </div>
      <div className="card-blanks">
        {BLANKS.map(blank => (
          <p key={blank}>{t(`methods.card.${blank}`)}</p>
        ))}
      </div>
      <p className="card-note">{t('methods.card.foot')}</p>
    </div>
  )
}
