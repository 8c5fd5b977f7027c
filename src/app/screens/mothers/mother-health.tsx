import { useTranslation } from 'react-i18next'
import type { MotherView } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'

const stageOf = (bbch: string) => bbch.slice(0, 1) as '0'

/** Tests with their validity, and what was seen: growth stage and health. */
export function MotherHealth({ view }: { readonly view: MotherView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const stage = view.observations.findLast(({ bbch }) => bbch !== null)
  const seen = view.observations.findLast(({ health }) => health !== '')
  return (
    <div>
      <h3>{t('mothers.tests')}</h3>
      {view.tests.length === 0 && <p className="soft small">{t('mothers.noTest')}</p>}
      <ul className="small tests">
        {view.tests
          .toReversed()
          .map(({ entry, on, test, result, laboratory, reference, validUntil, isOver }) => (
            <li key={entry} data-result={result}>
              <p className={result === 'clean' ? undefined : 'warn strong'}>
                {t('mothers.lab.line', {
                  test,
                  result: t(`mothers.lab.results.${result}`),
                  day: format.fullDay(on),
                })}
              </p>
              <p className="soft">
                {[
                  `${laboratory} ${reference}`.trim(),
                  validUntil !== null &&
                    t(isOver ? 'mothers.lab.over' : 'mothers.lab.valid', { day: format.fullDay(validUntil) }),
                ]
                  .filter(Boolean)
                  .join('; ')}
              </p>
            </li>
          ))}
      </ul>
      <p className="small">
        {stage === undefined || stage.bbch === null
          ? t('mothers.noStage')
          : t('mothers.stage', {
              bbch: stage.bbch,
              day: format.fullDay(stage.on),
              means: t(`mothers.stages.${stageOf(stage.bbch)}`),
            })}
      </p>
      {seen !== undefined && (
        <p className="small">{t('mothers.seen', { day: format.fullDay(seen.on), health: seen.health })}</p>
      )}
    </div>
  )
}
