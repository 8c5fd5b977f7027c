import { useTranslation } from 'react-i18next'
import type { ReadQuestion } from '../../../api/index.ts'
import { Pick } from '../../parts/pick.tsx'

/** What only the user can know, asked once for each sheet and remembered. */
export function ReadQuestions({
  questions,
  onAnswer,
}: {
  readonly questions: readonly ReadQuestion[]
  readonly onAnswer: (question: ReadQuestion, answer: string) => void
}) {
  const { t } = useTranslation()
  if (questions.length === 0) return null
  return (
    <section className="sheet stack">
      <h2>{t('imports.questions')}</h2>
      {questions.map(question => (
        <div key={`${question.sheet} ${question.id}`} className="question">
          <Pick
            label={`${question.asks} ${question.needed ? t('imports.needed') : ''}`.trim()}
            value={question.answer ?? ''}
            options={[
              { id: '', name: t('imports.unanswered') },
              ...question.choices.map(({ id, says }) => ({ id, name: says })),
            ]}
            onPick={answer => answer !== '' && onAnswer(question, answer)}
          />
          <p className="soft small">
            {question.sheet}
            {question.examples.length > 0 && `: ${question.examples.join(', ')}`}
          </p>
        </div>
      ))}
    </section>
  )
}
