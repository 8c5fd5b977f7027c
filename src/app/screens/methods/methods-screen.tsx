import { getRouteApi, Link } from '@tanstack/react-router'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { allGuides, guideName } from '../../../trade/guides/index.ts'
import { MethodMark, markOfMethod } from '../../../trade/index.ts'
import { answering } from '../../data/folded.ts'
import { useNames } from '../../data/use-names.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { CutPicture } from '../../pictures/cuts/cut-picture.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './methods.css'
import { Given } from '../../parts/given.tsx'
import { useTerm } from '../../text/use-term.ts'

const route = getRouteApi('/methods')

/** Every method, by its mark, with the step that one knows it by. */
export function MethodsScreen() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const { find: inAddress } = route.useSearch()
  const [find, setFind] = useState(inAddress ?? '')
  const navigate = route.useNavigate()
  const { nursery } = useNames()
  const answers = answering(find)
  const found = allGuides().filter(({ method, summary, goodFor }) =>
    answers(`${term(guideName(method))} ${summary} ${goodFor}`),
  )
  const used = (method: string) =>
    nursery?.protocols.filter(protocol => protocol.method === method).length ?? 0

  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('methods.title')}</h1>
          <p className="soft">{t('methods.says')}</p>
        </div>
        <FindField
          inAddress={inAddress}
          hint={t('methods.findHint')}
          onFind={setFind}
          onRest={find => void navigate({ search: was => ({ ...was, find }), replace: true })}
        />
      </div>
      {found.length === 0 && <p className="soft">{t('methods.empty')}</p>}
      {MethodMark.options.map(mark => {
        const guides = found.filter(({ method }) => markOfMethod(method) === mark)
        if (guides.length === 0) return null
        return (
          <section key={mark}>
            <h2 className="row">
              <Mark mark={mark} named size={28} />
              {t(`trade.mark.${mark}`)}
            </h2>
            <ul className="method-list">
              {guides.map(({ method, pictured, summary }) => (
                <li key={method}>
                  <Link to="/methods/$method" params={{ method }} className="sheet method-tile">
                    <CutPicture of={pictured} silent />
                    <span>
                      <strong>{term(guideName(method))}</strong>
                      <span className="small">
                        <Given says={summary} />
                      </span>
                      {used(method) > 0 && (
                        <span className="small soft">
                          {t('methods.used', { count: used(method), shown: format.number(used(method)) })}
                        </span>
                      )}
                    </span>
                  </Link>
                </li>
              ))}
            </ul>
          </section>
        )
      })}
    </div>
  )
}
