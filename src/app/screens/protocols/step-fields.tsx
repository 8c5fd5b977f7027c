import { useId } from 'react'
import { useTranslation } from 'react-i18next'
import type { Step } from '../../../trade/index.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { type FigureDraft, type FigureField, fieldsOf } from './protocol-draft.ts'

const ENDS = ['low', 'typical', 'high'] as const

/** One step of a protocol: its figures, each with the range that holds nine cases of ten, and where it comes from. */
export function StepFields({
  step,
  figures,
  wrong,
  onChange,
}: {
  readonly step: Step
  readonly figures: Readonly<Record<string, FigureDraft>>
  readonly wrong: ReadonlySet<string>
  readonly onChange: (key: string, figure: FigureDraft) => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const id = useId()
  const nameOf = ({ what, task }: FigureField): string =>
    what === 'minutes'
      ? t('protocols.minutes', { task: task ?? '' })
      : what === 'density'
        ? t('protocols.density', { unit: format.areaUnit })
        : what === 'survival'
          ? t('protocols.survival', { sign: t(`trade.sign.${step.sign}`).toLowerCase() })
          : t('protocols.days')
  return (
    <section className="sheet stack" aria-labelledby={id}>
      <div>
        <h2 id={id}>{term(step.name)}</h2>
        <p className="soft small">{t(`trade.place.${step.place}`)}</p>
      </div>
      <div className="figure-grid">
        <span aria-hidden="true" />
        {ENDS.map(end => (
          <span key={end} className="small soft" aria-hidden="true">
            {t(`protocols.${end}`)}
          </span>
        ))}
        {fieldsOf(step, format.areaNumber(1)).map(field => {
          const draft = figures[field.key]!
          const name = nameOf(field)
          return (
            <div key={field.key} className="figure-row">
              <span>
                {name}
                <small className="soft">
                  {term(field.figure.basis)}
                  {field.figure.note === undefined ? '' : `. ${format.sentence(field.figure.note)}`}
                </small>
              </span>
              {ENDS.map(end => (
                <input
                  key={end}
                  className="input"
                  inputMode="decimal"
                  aria-label={t('protocols.fieldName', { name, end: t(`protocols.${end}`).toLowerCase() })}
                  aria-invalid={wrong.has(field.key)}
                  value={draft[end]}
                  onChange={event => onChange(field.key, { ...draft, [end]: event.target.value })}
                />
              ))}
              {wrong.has(field.key) && (
                <p className="wrong" role="alert">
                  {t(`protocols.wrong.${field.what}`)}
                </p>
              )}
            </div>
          )
        })}
      </div>
    </section>
  )
}
