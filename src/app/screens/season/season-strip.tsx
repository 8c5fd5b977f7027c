import { getRouteApi } from '@tanstack/react-router'
import { startTransition, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { SeasonPlan } from '../../../api/index.ts'
import { useNames } from '../../data/use-names.tsx'
import { Choices } from '../../parts/choices.tsx'
import { FindField } from '../../parts/find-field.tsx'
import { StripPicture } from '../../pictures/season-strip/strip-picture.tsx'
import { weekAfter, weeksBetween } from '../../text/format.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useWeekName } from '../../text/use-week-said.ts'
import { SPANS, shownWeeks, spanAtFirst } from './shown-weeks.ts'
import { stripRows } from './strip-rows.ts'

const route = getRouteApi('/season')

/** The starts of the plan over the weeks, as far and as near as one likes. */
export function SeasonStrip({
  plan,
  chosen,
  tried,
  onChoose,
}: {
  readonly plan: SeasonPlan
  readonly chosen: string | null
  readonly tried: string | null
  readonly onChoose: (start: string, tried: string | undefined) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const weekSaid = useWeekName()
  const names = useNames()
  const { from, span = spanAtFirst(), find: inAddress } = route.useSearch()
  const [find, setFind] = useState(inAddress ?? '')
  const navigate = route.useNavigate()
  const { first, weeks } = shownWeeks(plan, from, span)
  const last = weekAfter(first, weeks)
  const rows = useMemo(
    () =>
      stripRows(plan, names.kind, names.protocols, find)
        .map(row => ({ ...row, starts: row.starts.filter(({ week }) => week >= first && week < last) }))
        .filter(({ starts }) => starts.length > 0),
    [plan, names, find, first, last],
  )
  const shift = (by: number) => {
    const next = weekAfter(first, by)
    void navigate({
      search: was => ({ ...was, from: weeksBetween(plan.firstWeek, next) <= 0 ? undefined : next }),
      replace: true,
      resetScroll: false,
    })
  }
  const number = rows.reduce((sum, { starts }) => sum + starts.length, 0)
  return (
    <section className="stack season-strip">
      <div className="row">
        <FindField
          inAddress={inAddress}
          hint={t('season.findHint')}
          onFind={find => startTransition(() => setFind(find))}
          onRest={find =>
            void navigate({ search: was => ({ ...was, find }), replace: true, resetScroll: false })
          }
        />
        <Choices
          label={t('season.span.label')}
          value={span}
          options={SPANS.map(id => ({ id, name: t(`season.span.${id}`) }))}
          onPick={id =>
            void navigate({ search: was => ({ ...was, span: id }), replace: true, resetScroll: false })
          }
        />
        <div className="row season-shift">
          <Button
            className="plain"
            onPress={() => shift(-Math.ceil(weeks / 2))}
            isDisabled={first === plan.firstWeek}
          >
            {t('common.previous')}
          </Button>
          <Button
            className="plain"
            onPress={() => shift(Math.ceil(weeks / 2))}
            isDisabled={weeksBetween(plan.firstWeek, last) >= plan.weeks}
          >
            {t('common.next')}
          </Button>
        </div>
      </div>
      {rows.length === 0 ? (
        <p className="soft">{t('season.noStarts')}</p>
      ) : (
        <StripPicture
          title={t('season.strip')}
          says={[
            t('season.stripSays', {
              count: number,
              shown: format.number(number),
              from: weekSaid(first),
            }),
            rows.some(({ starts }) => starts.some(({ isSet }) => isSet)) ? t('season.stripSet') : '',
          ]
            .filter(Boolean)
            .join(' ')}
          rows={rows}
          first={first}
          weeks={weeks}
          chosen={chosen}
          tried={tried}
          onChoose={onChoose}
        />
      )}
    </section>
  )
}
