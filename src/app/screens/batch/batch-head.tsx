import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { BatchView } from '../../../api/index.ts'
import { useOutbox } from '../../data/outbox/use-outbox.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { HoldList } from '../../parts/hold-list.tsx'
import { LicenceTally } from '../../parts/licence-tally.tsx'
import { useOpened } from '../../parts/use-opened.ts'
import { Mark } from '../../pictures/marks/mark.tsx'
import { daysBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTell } from '../../text/use-tell.ts'
import type { Asking } from './asking.ts'
import { MORE_DEEDS, NEAR_DEEDS, possible } from './batch-deed.ts'
import { BatchDrill } from './batch-drill.tsx'
import { DeedLeaf } from './deed-leaf.tsx'
import { DeedMenu } from './deed-menu.tsx'
import { NextOfBatch } from './next-of-batch.tsx'

export function BatchHead({
  view,
  onAsk,
}: {
  readonly view: BatchView
  readonly onAsk: (asking: Asking) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const names = useNames()
  const tell = useTell()
  const { waiting } = useOutbox()
  const [opened, open] = useOpened()
  const deed = [...NEAR_DEEDS, ...MORE_DEEDS].find(kind => kind === opened && possible(view, kind))
  const { row } = view
  const unsent = waiting.filter(({ entry: { body } }) => 'batch' in body && body.batch === row.id).length
  const isStanding = row.standing > 0
  return (
    <header className="batch-head">
      <Mark mark={row.mark} size={72} />
      <div className="stack">
        <div>
          <p className="small">
            <Link to="/batches">{t('batch.all')}</Link>
          </p>
          <h1>
            {t('batch.title', { name: row.name })}
            {row.onHold && <span className="tag warn batch-hold">{t('common.onHold')}</span>}
          </h1>
          <p className="batch-kind">{row.kindName}</p>
          <p>
            {t('batch.begun', {
              number: format.number(row.number),
              day: format.fullDay(row.startedOn),
              days: format.number(daysBetween(row.startedOn, names.nursery?.today ?? deviceDay())),
              protocol: names.protocol(row.protocol),
            })}{' '}
            <BatchDrill
              number="standing"
              says={t('batch.standing', { number: format.number(row.standing) })}
              onAsk={onAsk}
            />
            {row.finished > 0 && (
              <>
                ,{' '}
                <BatchDrill
                  number="finished"
                  says={t('batch.finished', { number: format.number(row.finished) })}
                  onAsk={onAsk}
                />
              </>
            )}
            {row.lost > 0 && (
              <>
                ,{' '}
                <BatchDrill
                  number="lost"
                  says={t('batch.lost', { number: format.number(row.lost) })}
                  onAsk={onAsk}
                />
              </>
            )}
            {row.benches.length > 0 && <>; {format.list(row.benches.map(id => names.bench(id)))}</>}.
          </p>
          {view.next !== null && <NextOfBatch next={view.next} steps={view.steps} />}
          <p className="row soft small">
            {t('batch.identity', { identity: tell(view.identity) })}
            <Link to="/methods/$method" params={{ method: row.method }}>
              {t('batch.method')}
            </Link>
          </p>
          {row.onHold && <p className="warn strong">{t('batch.hold')}</p>}
          {view.holds.length > 0 && <HoldList holds={view.holds} />}
          {unsent > 0 && (
            <p className="warn">{t('batch.waiting', { count: unsent, shown: format.number(unsent) })}</p>
          )}
        </div>
        {view.queries.length > 0 && (
          <div className="caution">
            <p className="strong">{t('batch.queries')}</p>
            {view.queries.map(({ id, says }) => (
              <p key={id}>{tell(says)}</p>
            ))}
          </div>
        )}
        {view.licences.map(licence => (
          <LicenceTally key={licence.cultivar} row={licence} today={names.nursery?.today ?? deviceDay()} />
        ))}
        <div className="row">
          {isStanding && (
            <Link to="/batches/$batch/count" params={{ batch: row.id }} className="deed large">
              {t('batch.count')}
            </Link>
          )}
          {isStanding &&
            NEAR_DEEDS.map(kind => (
              <Button key={kind} className="plain" onPress={() => open(kind)}>
                {t(`batch.does.${kind}`)}
              </Button>
            ))}
          <DeedMenu view={view} onPick={open} />
        </div>
      </div>
      {deed !== undefined && <DeedLeaf view={view} kind={deed} onClose={() => open(null)} />}
    </header>
  )
}
