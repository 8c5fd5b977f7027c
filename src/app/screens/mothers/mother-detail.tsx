import { Link } from '@tanstack/react-router'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { MotherRow } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.ts'
import { MotherDeed } from './mother-deed.tsx'

/** One mother tree: what it may give, its health, where its wood came from. */
export function MotherDetail({ row }: { readonly row: MotherRow }) {
  const { t } = useTranslation()
  const format = useFormat()
  const [deed, setDeed] = useState<'observe' | 'hold' | null>(null)
  const { mother } = row
  return (
    <div className="sheet stack">
      <div>
        <h2>{mother.name}</h2>
        <p>
          {row.cultivarName}
          {mother.block !== '' && ` · ${mother.block}`}
          {row.onHold && <span className="tag warn"> {t('common.onHold')}</span>}
          {row.retired && <span className="tag warn"> {t('mothers.retired')}</span>}
        </p>
      </div>
      <div>
        <h3>{t('mothers.gives')}</h3>
        {mother.gives.length === 0 && <p className="soft">{t('mothers.givesNothing')}</p>}
        <ul className="gives">
          {mother.gives.map(({ material, months, perYear }) => {
            const given = row.givenThisYear.find(one => one.material === material)
            const left = Math.max(0, perYear - (given?.number ?? 0))
            return (
              <li key={material}>
                <p>
                  {t('mothers.give', {
                    left: format.number(left),
                    may: format.number(perYear),
                    material: t(`trade.material.${material}`),
                  })}{' '}
                  <span className="soft small">
                    {t('mothers.months', {
                      months: format.months(months),
                    })}
                  </span>
                </p>
                <span className="left-bar" aria-hidden="true">
                  <span style={{ inlineSize: `${perYear > 0 ? (100 * left) / perYear : 0}%` }} />
                </span>
              </li>
            )
          })}
        </ul>
      </div>
      <ul className="small">
        <li>
          {row.lastTest === null
            ? t('mothers.noTest')
            : t('mothers.test', {
                test: row.lastTest.test,
                result: row.lastTest.result,
                day: format.fullDay(row.lastTest.on),
              })}
          {row.lastTest?.validUntil != null &&
            `, ${t('mothers.testValid', { day: format.fullDay(row.lastTest.validUntil) })}`}
        </li>
        <li>{row.bbch === null ? t('mothers.noStage') : t('mothers.stage', { bbch: row.bbch })}</li>
        {mother.planted !== null && <li>{t('mothers.planted', { day: format.fullDay(mother.planted) })}</li>}
        {mother.provenance !== '' && <li>{t('mothers.provenance', { provenance: mother.provenance })}</li>}
      </ul>
      <div className="row">
        <Button className="plain" onPress={() => setDeed('observe')}>
          {t('mothers.observe')}
        </Button>
        {!row.onHold && (
          <Button className="plain" onPress={() => setDeed('hold')}>
            {t('mothers.hold')}
          </Button>
        )}
        <Link to="/lineage/$what/$id" params={{ what: 'mother', id: mother.id }} className="quiet">
          {t('mothers.family')}
        </Link>
      </div>
      {deed !== null && <MotherDeed row={row} deed={deed} onClose={() => setDeed(null)} />}
    </div>
  )
}
