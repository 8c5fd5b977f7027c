import { getRouteApi } from '@tanstack/react-router'
import { useTranslation } from 'react-i18next'
import { Choices } from '../../parts/choices.tsx'
import { Compared } from './rates-compared.tsx'
import { Slumps, SlumpsNamed } from './slumps.tsx'
import { StepRates } from './step-rates.tsx'

const route = getRouteApi('/rates')
const VIEW = ['steps', 'kinds', 'rootstocks', 'methods', 'cultivars', 'months', 'people', 'slumps'] as const

/** What takes, by step; and what kinds, rootstocks, methods, cultivars, months and people do to it; and what does worse than before. */
export function RatesScreen() {
  const { t } = useTranslation()
  const { view = 'steps' } = route.useSearch()
  const navigate = route.useNavigate()
  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('rates.title')}</h1>
          <span className="unseen" data-names-page>
            {t(`rates.view.${view}`)}
          </span>
          <p className="soft">{t(`rates.says.${view}`)}</p>
        </div>
        <Choices
          label={t('rates.view.label')}
          value={view}
          options={VIEW.map(id => ({ id, name: t(`rates.view.${id}`) }))}
          onPick={id => void navigate({ search: was => ({ ...was, view: id }) })}
        />
      </div>
      {view !== 'slumps' && <SlumpsNamed />}
      {view === 'steps' ? <StepRates /> : view === 'slumps' ? <Slumps /> : <Compared by={view} />}
    </div>
  )
}
