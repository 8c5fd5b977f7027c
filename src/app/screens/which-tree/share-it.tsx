import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Answer, Question } from '../../../advice/index.ts'
import { speciesById } from '../../../trade/facts/index.ts'
import { linkOfQuestion, searchOfLink } from './question-link.ts'
import { Tick } from './tick.tsx'

/** Figures that the nursery states travel in the address: the page for a web site asks nobody for them. */
const withOwnFigures = (question: Question, answer: Answer): Question => ({
  ...question,
  set: Object.fromEntries(
    answer.assumptions.flatMap(({ key, figure }) =>
      figure.basis === 'set by the nursery' ? [[key, figure.typical]] : [],
    ),
  ),
})

/** The sheet, the link that reopens the question, and the page that only reads. */
export function ShareIt({ question, answer }: { readonly question: Question; readonly answer: Answer }) {
  const { t } = useTranslation()
  const [isCopied, setCopied] = useState<boolean | null>(null)
  const [withPrices, setWithPrices] = useState(false)
  const page = `${location.origin}/plant.html?${searchOfLink(linkOfQuestion(withOwnFigures(question, answer), withPrices))}`
  const code = `<iframe src="${page.replaceAll('&', '&amp;')}" style="width:100%;height:60rem;border:0" loading="lazy" title="${t('whichTree.title')}"></iframe>`
  const copy = () =>
    void navigator.clipboard.writeText(location.href).then(
      () => setCopied(true),
      () => setCopied(false),
    )
  return (
    <section className="sheet share">
      <h2>{t('whichTree.share.title')}</h2>
      <div className="row">
        <Button className="deed" onPress={() => print()}>
          {t('whichTree.share.print')}
        </Button>
        <Button className="plain" onPress={copy}>
          {t('whichTree.share.copy')}
        </Button>
        <span aria-live="polite" className="small">
          {isCopied === null ? '' : t(isCopied ? 'whichTree.share.copied' : 'whichTree.share.copyFailed')}
        </span>
      </div>
      {speciesById(question.species) === undefined ? (
        <p className="soft small">{t('whichTree.share.notEmbedded')}</p>
      ) : (
        <details>
          <summary className="strong">{t('whichTree.share.embed')}</summary>
          <p className="soft small">{t('whichTree.share.embedSays')}</p>
          {question.offers.length > 0 && (
            <Tick isOn={withPrices} onTick={setWithPrices}>
              {t('whichTree.share.prices')}
            </Tick>
          )}
          <label className="field">
            <span className="field-label">{t('whichTree.share.code')}</span>
            <textarea readOnly rows={4} value={code} onFocus={event => event.target.select()} />
          </label>
          <p>
            <a className="plain" href={page} target="_blank" rel="noreferrer">
              {t('whichTree.share.open')}
            </a>
          </p>
        </details>
      )}
    </section>
  )
}
