import { getRouteApi, Link } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { methodById, type Species } from '../../../trade/facts/index.ts'
import { markOfMethod } from '../../../trade/index.ts'
import { answering } from '../../data/folded.ts'
import { useFruits } from '../../data/use-fruits.ts'
import { useNames } from '../../data/use-names.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { useOpened } from '../../parts/use-opened.ts'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { AddFruit } from './add-fruit.tsx'
import { figureLine } from './fact-words.ts'
import './species.css'
import { useTerm } from '../../text/use-term.ts'

const route = getRouteApi('/species')

/** Every fruit that the facts know, and those that the nursery added. */
export function SpeciesScreen() {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const { find: inAddress } = route.useSearch()
  const [find, setFind] = useState(inAddress ?? '')
  const navigate = route.useNavigate()
  const { nursery } = useNames()
  const fruits = useFruits()
  const [opened, open] = useOpened()
  const answers = answering(find)
  const found = [...fruits.all]
    .filter(({ commonName, botanical, family, ways }) => {
      const methods = ways.map(({ method }) => term(methodById(method).label)).join(' ')
      return answers(`${term(commonName)} ${botanical} ${family} ${methods}`)
    })
    .sort((a, b) => term(a.commonName).localeCompare(term(b.commonName), format.locale))
  const isAdded = (id: string) => nursery?.speciesSets.some(({ species }) => species.id === id) ?? false
  const stated = (id: string) => nursery?.factSets.filter(({ species }) => species === id).length ?? 0
  const years = ({ orchard: { yearsToFruitClonal: clonal, yearsToFruitSeedling: seedling } }: Species) =>
    seedling === null
      ? t('species.firstFruit', { clonal: format.amount(clonal.typical) })
      : t('species.firstFruitSeedling', {
          clonal: format.amount(clonal.typical),
          seedling: format.amount(seedling.typical),
        })

  return (
    <div className="stack">
      <div className="page-head">
        <div>
          <h1>{t('species.title')}</h1>
          <p className="soft">{t('species.says')}</p>
        </div>
        <div className="row species-find">
          <FindField
            inAddress={inAddress}
            hint={t('species.findHint')}
            onFind={setFind}
            onRest={find => void navigate({ search: was => ({ ...was, find }), replace: true })}
          />
          <Button className="deed" onPress={() => open('add')}>
            {t('species.add.open')}
          </Button>
        </div>
      </div>
      {found.length === 0 && <p className="soft">{t('species.empty')}</p>}
      <ul className="species-list">
        {found.map(species => (
          <li key={species.id}>
            <Link to="/species/$species" params={{ species: species.id }} className="sheet species-tile">
              <strong>{term(species.commonName)}</strong>
              <em className="small">{species.botanical}</em>
              <span className="row species-marks">
                {[...new Set(species.ways.map(({ method }) => markOfMethod(method)))].map(mark => (
                  <Mark key={mark} mark={mark} named size={26} />
                ))}
              </span>
              <span className="small">
                {years(species)}.{' '}
                {t('species.bearsCold', {
                  cold: figureLine(species.orchard.minMatureCelsius, '°C', format),
                })}
                .
              </span>
              {(isAdded(species.id) || stated(species.id) > 0) && (
                <span className="small strong">
                  {[
                    ...(isAdded(species.id) ? [t('species.added')] : []),
                    ...(stated(species.id) > 0
                      ? [
                          t('species.stated', {
                            count: stated(species.id),
                            shown: format.number(stated(species.id)),
                          }),
                        ]
                      : []),
                  ].join(', ')}
                </span>
              )}
            </Link>
          </li>
        ))}
      </ul>
      {opened === 'add' && <AddFruit fruits={fruits} onClose={() => open(null)} />}
    </div>
  )
}
