import { useMemo } from 'react'
import { useTranslation } from 'react-i18next'
import { whichTree } from '../../../advice/index.ts'
import { createFormat } from '../../text/format.ts'
import { localeFor } from '../../text/reader-locale.ts'
import { useTerm } from '../../text/use-term.ts'
import { AnswerView } from './answer-view.tsx'
import { askedInWords } from './asked-in-words.ts'
import type { PageAsked } from './page-link.ts'
import './which-tree.css'
import './ways-table.css'
import './buyers-sheet.css'

/** The answer to one question, to read. */
export function PlantPage({ asked }: { readonly asked: PageAsked | null }) {
  const { t } = useTranslation()
  return asked === null ? <p>{t('whichTree.noFruit')}</p> : <Answered asked={asked} />
}

function Answered({ asked: { question, species, units } }: { readonly asked: PageAsked }) {
  const { t, i18n } = useTranslation()
  const term = useTerm()
  const format = useMemo(
    () => createFormat(localeFor(i18n.language), units, term),
    [i18n.language, units, term],
  )
  const answer = useMemo(() => whichTree(question, species), [question, species])
  return (
    <main className="stack which-tree plant-page">
      <header>
        <h1>{t('whichTree.sheet.title', { fruit: term(species.commonName) })}</h1>
        <p>
          {t('whichTree.sheet.asked')}: {askedInWords(question, t, format)}.
        </p>
      </header>
      <AnswerView question={question} species={species} answer={answer} format={format} onAsk={null} />
      <p className="soft small">{t('whichTree.sheet.estimate')}</p>
    </main>
  )
}
