import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { type Question, whichTree } from '../../../advice/index.ts'
import { speciesById } from '../../../trade/facts/index.ts'
import { createFormat } from '../../text/format.ts'
import { readerLocale } from '../../text/reader-locale.ts'
import { AnswerView } from './answer-view.tsx'
import { askedInWords } from './asked-in-words.ts'
import './which-tree.css'

/** The answer to one question, to read. */
export function PlantPage({ asked }: { readonly asked: Question }) {
  const { t } = useTranslation()
  const format = useMemo(() => createFormat(readerLocale(), 'metric'), [])
  const question = useMemo(() => ({ ...asked, onlyOffered: asked.offers.length > 0 }), [asked])
  const species = speciesById(question.species)
  const answer = useMemo(() => species && whichTree(question, species), [question, species])
  if (species === undefined || answer === undefined) return <p>{t('whichTree.none')}</p>
  return (
    <main className="stack which-tree plant-page">
      <header>
        <h1>{t('whichTree.sheet.title', { fruit: species.commonName })}</h1>
        <p>
          {t('whichTree.sheet.asked')}: {askedInWords(question, t, format)}.
        </p>
      </header>
      <AnswerView question={question} species={species} answer={answer} format={format} onAsk={null} />
      <p className="soft small">{t('whichTree.sheet.estimate')}</p>
    </main>
  )
}
