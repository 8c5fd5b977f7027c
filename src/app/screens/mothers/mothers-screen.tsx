import { useQuery } from '@tanstack/react-query'
import { getRouteApi } from '@tanstack/react-router'
import { startTransition, useState } from 'react'
import { useTranslation } from 'react-i18next'
import { answering } from '../../data/folded.ts'
import { look } from '../../data/queries.ts'
import { Asked } from '../../parts/asked.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { Told } from '../../parts/told.tsx'
import { BlockPicture } from '../../pictures/block-plan/block-picture.tsx'
import { useFormat } from '../../text/use-format.tsx'
import './mothers.css'
import { MotherDetail } from './mother-detail.tsx'

const route = getRouteApi('/mothers')

/** The mother trees, block by block, as they stand; what each may give now. */
export function MothersScreen() {
  const { t } = useTranslation()
  const format = useFormat()
  const { mother: chosen, find: inAddress } = route.useSearch()
  const [find, setFind] = useState(inAddress ?? '')
  const navigate = route.useNavigate()
  const mothers = useQuery(look.mothers())
  return (
    <Asked query={mothers} what={t('mothers.title')}>
      {rows => {
        const answers = answering(find)
        const found = rows.filter(({ mother, cultivarName }) =>
          answers(`${mother.name} ${cultivarName} ${mother.block}`),
        )
        const blocks = [...new Set(found.map(({ mother }) => mother.block))]
        const holds = rows.filter(({ onHold }) => onHold).length
        const shown = rows.find(({ mother }) => mother.id === chosen)
        return (
          <div className="stack">
            <div className="page-head">
              <div>
                <h1>{t('mothers.title')}</h1>
                <p className="soft">
                  {t('mothers.says', {
                    count: rows.length,
                    shown: format.number(rows.length),
                    holds:
                      holds === 0
                        ? t('mothers.noHolds')
                        : t('mothers.holds', { count: holds, shown: format.number(holds) }),
                  })}
                </p>
              </div>
              <FindField
                inAddress={inAddress}
                hint={t('mothers.findHint')}
                onFind={find => startTransition(() => setFind(find))}
                onRest={find => void navigate({ search: was => ({ ...was, find }), replace: true })}
              />
            </div>
            <div className="mothers-columns">
              <div className="stack">
                {blocks.map(block => (
                  <BlockPicture
                    key={block}
                    block={block}
                    rows={found.filter(({ mother }) => mother.block === block)}
                    chosen={chosen ?? null}
                    onChoose={id =>
                      void navigate({
                        search: was => ({ ...was, mother: id }),
                        resetScroll: false,
                      })
                    }
                  />
                ))}
              </div>
              <Told chosen={chosen ?? null} className="mother-detail">
                {shown === undefined ? (
                  <p className="soft choose-one">{t('mothers.choose')}</p>
                ) : (
                  <MotherDetail key={shown.mother.id} id={shown.mother.id} />
                )}
              </Told>
            </div>
          </div>
        )
      }}
    </Asked>
  )
}
