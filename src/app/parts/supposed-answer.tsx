import { keepPreviousData, useQuery, useQueryClient } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { Supposed, WhatIf } from '../../planning/index.ts'
import { capital } from '../../trade/index.ts'
import { look } from '../data/queries.ts'
import { say } from '../data/say.ts'
import { useHowFar } from '../data/use-how-far.ts'
import { useNames } from '../data/use-names.tsx'
import { useFormat } from '../text/use-format.tsx'
import { useWeekName } from '../text/use-week-said.ts'
import { Asked } from './asked.tsx'
import { useDone } from './done.tsx'
import { SomeOf } from './some-of.tsx'
import './suppose.css'
import { useTell } from '../text/use-tell.ts'
import { UnderWay } from './under-way.tsx'
import { useRested } from './use-rested.ts'

/** Less money than this is none. */
const NO_COST = 0.5

/** What would change if this were entered; it can be stopped. Asked once it rests. */
export function SupposedAnswer({ supposed }: { readonly supposed: Supposed }) {
  const { t } = useTranslation()
  const tell = useTell()
  const queries = useQueryClient()
  const rested = useRested(supposed)
  const asked = look.whatIf(rested ?? supposed)
  const answer = useQuery({ ...asked, enabled: rested !== null, placeholderData: keepPreviousData })
  const progress = useHowFar('what if', answer.isFetching)
  const isStopped =
    rested !== null &&
    !answer.isFetching &&
    !answer.isError &&
    (answer.data === undefined || answer.isPlaceholderData)
  return (
    <div className="stack suppose-answer" aria-live="polite">
      {answer.isFetching && (
        <UnderWay
          says={progress === null ? t('suppose.answer') : tell(progress.says)}
          share={progress?.share ?? null}
          onStop={() => void queries.cancelQueries({ queryKey: asked.queryKey, exact: true })}
        />
      )}
      {isStopped ? (
        <p className="soft">{t('suppose.stopped')}</p>
      ) : (
        <Asked query={answer} what={t('suppose.answer')}>
          {said => <Answer said={said} />}
        </Asked>
      )}
      <p className="soft small">{t('suppose.basis')}</p>
    </div>
  )
}

/** The same, and it can be made so. */
export function SupposedToKeep({
  supposed,
  what,
  onKept,
}: {
  readonly supposed: Supposed
  /** Its name, to say that it is changed. */
  readonly what: string
  readonly onKept: () => void
}) {
  const { t } = useTranslation()
  const done = useDone()
  const keep = async () => {
    const said = await say([supposed])
    done.tell(t('suppose.kept', { what }), said)
    onKept()
  }
  return (
    <>
      <SupposedAnswer supposed={supposed} />
      <p>
        <Button className="deed" onPress={() => void keep()}>
          {t('suppose.keep')}
        </Button>
      </p>
    </>
  )
}

function Answer({ said }: { readonly said: WhatIf }) {
  const { t } = useTranslation()
  const format = useFormat()
  const tell = useTell()
  const names = useNames()
  const { saves, weighsLess, orders, limits, starts } = said
  const paysLess = saves - weighsLess
  const cost = format.money(Math.abs(paysLess))
  const short = format.money(Math.abs(weighsLess))
  const weekSaid = useWeekName()
  return (
    <div className="stack">
      <p className="strong">
        {Math.abs(paysLess) < NO_COST
          ? t('suppose.same')
          : t(paysLess > 0 ? 'suppose.saves' : 'suppose.costs', { cost })}{' '}
        {Math.abs(weighsLess) >= NO_COST &&
          t(weighsLess > 0 ? 'suppose.weighsLess' : 'suppose.weighsMore', { short })}
      </p>
      {orders.length === 0 ? (
        <p>{t('suppose.sameChances')}</p>
      ) : (
        <SomeOf
          items={[...orders]
            .sort((a, b) => a.after - a.before - (b.after - b.before))
            .map(({ order, before, after }) => ({
              key: order,
              says: (
                <Link to="/orders" search={{ order }}>
                  {t('batch.after.chance', {
                    order,
                    before: format.chance(before),
                    after: format.chance(after),
                  })}
                </Link>
              ),
            }))}
        />
      )}
      {limits.gone.length + limits.added.length > 0 && (
        <SomeOf
          items={[
            ...limits.gone.map(({ rule, subject, from }) => ({
              key: `gone ${rule} ${tell(subject)} ${from}`,
              says: t('suppose.gone', { subject: capital(tell(subject)) }),
            })),
            ...limits.added.map(({ rule, subject, from, sentence }) => ({
              key: `added ${rule} ${tell(subject)} ${from}`,
              says: t('suppose.added', { sentence: tell(sentence) }),
            })),
          ]}
        />
      )}
      {starts.length === 0 ? (
        <p>{t('suppose.sameStarts')}</p>
      ) : (
        <details>
          <summary>
            {t('suppose.starts', { count: starts.length, shown: format.number(starts.length) })}
          </summary>
          <SomeOf
            items={starts.map(({ start, kind, week, before, after }) => ({
              key: start,
              says: t('suppose.start', {
                kind: names.kind(kind),
                week: weekSaid(week),
                before: format.number(before),
                after: format.number(after),
              }),
            }))}
          />
        </details>
      )}
    </div>
  )
}
