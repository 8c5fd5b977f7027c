import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import {
  type Answer,
  type AssumptionKey,
  type Question,
  type TakenKey,
  taken,
} from '../../../advice/index.ts'
import { citation, sourceById } from '../../../trade/facts/index.ts'
import { Given } from '../../parts/given.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { useTerm } from '../../text/use-term.ts'
import { type Says, sayInput, sayTaken, shownInput } from './say-figures.ts'

/** The container of which canopy and height are taken. */
const POT_LITRES = 50

/** Words for figures stand in a sentence elsewhere; as names they begin with a capital and no article. */
const asName = (text: string, articles: string): string => {
  const [first = '', ...rest] = text.split(' ')
  const bare = (articles.split(' ').includes(first) ? rest.join(' ') : text).replace(/,$/, '')
  return bare.charAt(0).toUpperCase() + bare.slice(1)
}

/** What the answer rests on: each figure with spread, basis and source, to be overruled on the spot. */
export function AssumptionList({
  answer,
  question,
  says,
  onAsk,
}: {
  readonly answer: Answer
  readonly question: Question
  readonly says: Says
  readonly onAsk: ((question: Question) => void) | null
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const set = (key: AssumptionKey, value: number | null) => {
    const { [key]: _, ...rest } = question.set
    onAsk?.({ ...question, set: value === null ? rest : { ...rest, [key]: value } })
  }
  return (
    <details className="sheet assumptions">
      <summary>
        <h2>{t('whichTree.assumptions.title')}</h2>
      </summary>
      <p className="soft small">
        {t('whichTree.assumptions.says')}{' '}
        {onAsk !== null && (
          <Link to="/species/$species" params={{ species: question.species }} className="in-words">
            {t('whichTree.assumptions.forGood')}
          </Link>
        )}
      </p>
      <ul>
        {answer.assumptions.map(({ key, figure }) => (
          <li key={key}>
            <div>
              <p className="strong">{asName(t(`whichTree.inputs.${key}`), t('whichTree.inputArticles'))}</p>
              <p className="soft small">
                {[
                  `${sayInput(says, key, figure.low)} – ${sayInput(says, key, figure.high)}`,
                  term(figure.basis),
                  ...figure.sources.map(id => {
                    const source = sourceById(id)
                    return source === undefined ? id : citation(source)
                  }),
                ].join('. ')}
                {figure.note !== undefined && (
                  <>
                    {'. '}
                    <Given says={says.format.sentence(figure.note)} />
                  </>
                )}
              </p>
            </div>
            {onAsk === null ? (
              <p className="number">{sayInput(says, key, figure.typical)}</p>
            ) : (
              <div className="row">
                <NumberAsked
                  label={[t('whichTree.assumptions.typical'), shownInput(says.format, key).unit]
                    .filter(Boolean)
                    .join(', ')}
                  shown={shownInput(says.format, key)}
                  value={Number(figure.typical.toPrecision(6))}
                  least={key.endsWith('Celsius') ? -60 : 0}
                  most={key.endsWith('Share') ? 1 : 100_000}
                  step={key.endsWith('Share') ? 0.05 : 0.5}
                  onSay={value => set(key, value ?? figure.typical)}
                />
                {question.set[key] !== undefined && (
                  <Button className="quiet" onPress={() => set(key, null)}>
                    {t('whichTree.assumptions.back')}
                  </Button>
                )}
              </div>
            )}
          </li>
        ))}
      </ul>
      <h3>{t('whichTree.assumptions.taken')}</h3>
      <ul className="taken small">
        {(Object.keys(taken) as TakenKey[]).map(key => (
          <li key={key}>
            {t(`whichTree.taken.${key}`, {
              value: sayTaken(says, taken[key]),
              pot: says.format.measure(POT_LITRES, 'litres'),
            })}{' '}
            <span className="soft">{term(taken[key].basis)}</span>
          </li>
        ))}
      </ul>
    </details>
  )
}
