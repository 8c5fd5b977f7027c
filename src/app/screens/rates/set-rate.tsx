import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import type { RateRow } from '../../../api/index.ts'
import { ShareFigure } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { strike } from '../../data/say.ts'
import { useDone } from '../../parts/done.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { SaidSlider } from '../../parts/said-slider.tsx'
import { SpreadFields, type SpreadTyped } from '../../parts/spread-fields.tsx'
import { SupposedAnswer } from '../../parts/supposed-answer.tsx'
import { useTried } from '../../parts/use-tried.ts'
import { figureTyped } from '../../text/figure-typed.ts'
import { shownUnit } from '../../text/shown-unit.ts'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { aroundTypical, type Shares } from './around-typical.ts'

/** The rate of a step as it is, with where it comes from. */
export type RateToSet = Pick<
  RateRow,
  'protocol' | 'step' | 'stepName' | 'kind' | 'kindName' | 'mean' | 'low' | 'high' | 'basis' | 'sources'
> &
  Partial<Pick<RateRow, 'setBy'>>

const percent = shownUnit('share', 'metric')
const typedOf = (share: number) => String(Math.round(1000 * share) / 10)
const typed = ({ low, typical, high }: Shares) => ({
  low: typedOf(low),
  typical: typedOf(typical),
  high: typedOf(high),
})

/** As it stands in the address of the page. */
const spreadAs = ({ low, typical, high }: SpreadTyped): string => [low, typical, high].join('/')
const spreadIn = (text: string): SpreadTyped | null => {
  const [low, typical, high, more] = text.split('/')
  return low === undefined || typical === undefined || high === undefined || more !== undefined
    ? null
    : { low, typical, high }
}

/** Tries another rate and says what it would change; with a reason it overrules the one that is. */
export function SetRate({ rate, onClose }: { readonly rate: RateToSet; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const done = useDone()
  const { data: state } = useQuery(look.plan())
  /** Low and high go with the slider as they were typed last. */
  const [around, setAround] = useState<Shares>({ low: rate.low, typical: rate.mean, high: rate.high })
  const asItIs = typed({ low: rate.low, typical: rate.mean, high: rate.high })
  const [said, put] = useTried(spreadAs(asItIs))
  const draft = spreadIn(said) ?? asItIs
  const setDraft = (to: SpreadTyped) => put(spreadAs(to))
  const [why, setWhy] = useState('')
  const figure = ShareFigure.safeParse(figureTyped(draft, percent))
  const isOther = JSON.stringify(draft) !== JSON.stringify(asItIs)
  const kind = rate.kindName ?? t('rates.anyKind')
  const { protocol, step, kind: kindOfTree } = rate
  const typical = figure.success ? figure.data.typical : around.typical
  const body = figure.success
    ? { kind: 'rate-set/1' as const, protocol, step, kindOfTree, survival: figure.data }
    : null

  const takeBack = async (setBy: string) => {
    const said = await strike([setBy], t('rates.takeBack'))
    if (!said.kept) return
    done.tell(t('rates.takenBack', { step: term(rate.stepName), kind }), said)
    onClose()
  }

  return (
    <EntryForm
      title={t('rates.overruleTitle')}
      bodies={body !== null && why.trim() !== '' ? [{ ...body, why: why.trim() }] : null}
      need={t('common.spread.needShare')}
      told={t('rates.kept', { step: term(rate.stepName), kind })}
      keep={t('rates.overrule')}
      onClose={onClose}
    >
      <p>{t('rates.overruleSays', { kind, step: term(rate.stepName) })}</p>
      <p className="soft small">{[rate.basis, ...rate.sources].join('; ')}</p>
      {rate.setBy != null && (
        <p>
          <Button className="plain" onPress={() => void takeBack(rate.setBy!)}>
            {t('rates.takeBack')}
          </Button>
        </p>
      )}
      <SaidSlider
        label={t('rates.tried')}
        said={t('rates.triedSays', { tried: format.share(typical), now: format.share(rate.mean) })}
        from={1}
        to={99}
        value={Math.round(100 * typical)}
        onChange={to => setDraft(typed(aroundTypical(around, to / 100)))}
      />
      <SpreadFields
        unit={percent.unit}
        typed={draft}
        onType={next => {
          setDraft(next)
          const said = figureTyped(next, percent)
          if (said !== null) setAround(said)
        }}
      />
      {state?.plan && body !== null && isOther && (
        <div className="suppose">
          <SupposedAnswer supposed={{ ...body, why: t('rates.tried') }} />
        </div>
      )}
      {state?.plan === null && isOther && <p className="soft">{t('orders.promise.noPlan')}</p>}
      <Field label={t('rates.why')} value={why} onChange={setWhy} />
    </EntryForm>
  )
}
