import { useMemo, useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Question } from '../../../advice/index.ts'
import { Given } from '../../parts/given.tsx'
import { CropPicture } from '../../pictures/crop/crop-picture.tsx'
import type { Format } from '../../text/format.ts'
import { AssumptionList } from './assumption-list.tsx'
import { type Answered, useTurns } from './use-answer.ts'
import { wayNames } from './way-names.ts'
import { WaysTable } from './ways-table.tsx'
import { WishList } from './wish-list.tsx'

/** An answer, to look at: the chart, the sentences, the table, the cautions and what it rests on. */
export function AnswerView({
  question,
  species,
  answer,
  format,
  onAsk,
}: Answered & {
  readonly format: Format
  /** Null where the page only reads. */
  readonly onAsk: ((question: Question) => void) | null
}) {
  const { t } = useTranslation()
  const [chosen, setChosen] = useState<string | null>(null)
  const nameOf = useMemo(() => wayNames(answer, t), [answer, t])
  const says = useMemo(() => ({ t, format }), [t, format])
  const { turns, isLooking } = useTurns(question, species, answer)
  const { climate } = answer
  const degrees = (value: number) => format.measure(Math.abs(value) < 0.05 ? 0 : value, '°C')
  if (answer.ways.length === 0) return <p>{t('whichTree.none')}</p>
  return (
    <div className="answer">
      <section className="sheet">
        <CropPicture answer={answer} chosen={chosen} onChoose={setChosen} nameOf={nameOf} format={format} />
        <p className="soft small">
          {t('whichTree.climateSays', {
            usual: degrees(climate.coldestNightUsual),
            ten: degrees(climate.coldestNightOnceInTen),
            error: format.amount(format.shown('± °C').to(climate.coldestNightError)),
            chill: format.share(climate.enoughChill),
            hours: format.number(climate.chillHours),
            warm: format.share(climate.enoughWarmth),
          })}
        </p>
      </section>
      <WishList answer={answer} turns={turns} isLooking={isLooking} nameOf={nameOf} says={says} />
      <WaysTable answer={answer} nameOf={nameOf} says={says} chosen={chosen} />
      {answer.cautions.length > 0 && (
        <section className="sheet cautions">
          <h2>{t('whichTree.cautions')}</h2>
          <ul>
            {answer.cautions.map(({ text }) => (
              <li key={text} className="caution">
                <Given says={format.sentence(text)} />
              </li>
            ))}
          </ul>
          <p className="soft small">{t('whichTree.rules')}</p>
        </section>
      )}
      <AssumptionList answer={answer} question={question} says={says} onAsk={onAsk} />
    </div>
  )
}
