import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { asLanguage } from '../../text/language.ts'
import type { Units } from '../../text/shown-unit.ts'
import { pageSearch } from './page-link.ts'
import { Tick } from './tick.tsx'
import type { Answered } from './use-answer.ts'

/** The sheet, the link that reopens the question, and the page that only reads. */
export function ShareIt({ question, answer, species, units }: Answered & { readonly units: Units }) {
  const { t, i18n } = useTranslation()
  const [isCopied, setCopied] = useState<boolean | null>(null)
  const [withPrices, setWithPrices] = useState(false)
  const search = pageSearch(question, answer, species, units, asLanguage(i18n.language) ?? 'en', withPrices)
  const page = `${location.origin}/plant.html?${search}`
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
      {search === undefined ? (
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
