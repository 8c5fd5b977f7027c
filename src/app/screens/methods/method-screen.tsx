import { getRouteApi, Link } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { flushSync } from 'react-dom'
import { useTranslation } from 'react-i18next'
import { type Guide, guideCautions, guideName, guideOf } from '../../../trade/guides/index.ts'
import { MethodId, markOfMethod } from '../../../trade/index.ts'
import { Mark } from '../../pictures/marks/mark.tsx'
import './methods.css'
import { Given } from '../../parts/given.tsx'
import { useTerm } from '../../text/use-term.ts'
import { BenchCard, type Paper } from './bench-card.tsx'
import { MethodFigures } from './method-figures.tsx'
import { MethodFruits } from './method-fruits.tsx'
import { MethodOwn } from './method-own.tsx'
import { MethodSteps } from './method-steps.tsx'
import { useMethod } from './use-method.ts'

const route = getRouteApi('/methods/$method')

/** One method: what for, with what, how, what goes wrong, and what comes after; printed, it is a bench card. */
export function MethodScreen() {
  const { t } = useTranslation()
  const { method } = route.useParams()
  const known = MethodId.safeParse(method)
  return (
    <div className="stack">
      <p className="not-printed">
        <Link to="/methods">{t('methods.all')}</Link>
      </p>
      {known.success ? (
        <MethodPage key={known.data} guide={guideOf(known.data)} />
      ) : (
        <h1>{t('methods.missing')}</h1>
      )}
    </div>
  )
}

function MethodPage({ guide }: { readonly guide: Guide }) {
  const { t } = useTranslation()
  const term = useTerm()
  const { method, summary, goodFor, notFor, needs, failures, aftercare, cautions } = guide
  const own = useMethod(method)
  const [paper, setPaper] = useState<Paper>('A4')
  const printCard = (wanted: Paper) => {
    flushSync(() => setPaper(wanted))
    print()
  }
  return (
    <>
      <article className="stack not-printed">
        <div className="page-head">
          <div>
            <h1 className="row">
              <Mark mark={markOfMethod(method)} size={36} />
              {term(guideName(method))}
            </h1>
            <p>
              <Given says={summary} />
            </p>
          </div>
          <div className="row">
            <Button className="deed" onPress={() => printCard('A4')}>
              {t('methods.print')}
            </Button>
            <Button className="plain" onPress={() => printCard('A5')}>
              {t('methods.printSmall')}
            </Button>
          </div>
        </div>
        <div className="method-fit">
          <section className="sheet">
            <h2>{t('methods.goodFor')}</h2>
            <p>
              <Given says={goodFor} />
            </p>
          </section>
          <section className="sheet">
            <h2>{t('methods.notFor')}</h2>
            <p>
              <Given says={notFor} />
            </p>
          </section>
        </div>
        <section className="method-cautions" aria-label={t('methods.cautions.title')}>
          {cautions.map(caution => (
            <p key={caution} className="caution">
              {term(guideCautions[caution])}
            </p>
          ))}
          <p className="caution strong">{t('trade.safety')}</p>
        </section>
        <section className="sheet stack">
          <h2>{t('methods.needs.title')}</h2>
          <dl className="method-needs">
            <div>
              <dt>{t('methods.needs.tools')}</dt>
              <dd>
                <ul>
                  {needs.tools.map(tool => (
                    <li key={tool}>
                      <Given says={tool} />
                    </li>
                  ))}
                </ul>
              </dd>
            </div>
            {(['wood', 'stock', 'season'] as const).map(
              key =>
                needs[key] !== null && (
                  <div key={key}>
                    <dt>{t(`methods.needs.${key}`)}</dt>
                    <dd>
                      <Given says={needs[key]} />
                    </dd>
                  </div>
                ),
            )}
          </dl>
        </section>
        <MethodSteps steps={guide.steps} />
        <div className="method-fit">
          <section className="sheet stack">
            <h2>{t('methods.failures.title')}</h2>
            <dl className="method-failures">
              {failures.map(({ sign, causes }) => (
                <div key={sign}>
                  <dt>
                    <Given says={sign} />
                  </dt>
                  <dd>
                    {t('methods.failures.cause')}: <Given says={causes.join('; ')} />.
                  </dd>
                </div>
              ))}
            </dl>
          </section>
          <section className="sheet stack">
            <div>
              <h2>{t('methods.aftercare.title')}</h2>
              <p className="soft small">{t('methods.aftercare.says')}</p>
            </div>
            <ol className="method-weeks">
              {aftercare.map(({ fromWeek, toWeek, care }) => (
                <li key={fromWeek}>
                  <strong>{t('methods.aftercare.weeks', { from: fromWeek, to: toWeek })}</strong>{' '}
                  <Given says={care} />
                </li>
              ))}
            </ol>
          </section>
        </div>
        <MethodFigures method={method} protocols={own.protocols} />
        <MethodFruits method={method} />
        <MethodOwn {...own} />
      </article>
      <BenchCard guide={guide} protocols={own.protocols} paper={paper} />
    </>
  )
}
