import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import type { Question } from '../../../advice/index.ts'
import type { Fruits } from '../../../trade/facts/index.ts'
import { Choices } from '../../parts/choices.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { AskPlace } from './ask-place.tsx'
import { Tick } from './tick.tsx'

/** Everything that is asked; each change is said at once. */
export function AskForm({
  question,
  fruits,
  worthPerKg,
  isMaker,
  onAsk,
}: {
  readonly question: Question
  readonly fruits: Fruits
  readonly worthPerKg: number
  /** The maker's side asks for the fruit alone. */
  readonly isMaker: boolean
  readonly onAsk: (question: Question) => void
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const { shown } = useFormat()
  const say = (change: Partial<Question>) => onAsk({ ...question, ...change })
  const { amount, ground } = question
  const [cultivar, setCultivar] = useState(question.cultivar)
  const fruit = (
    <Pick
      label={t('whichTree.fruit')}
      value={question.species as string}
      options={[...fruits.all]
        .sort((a, b) => term(a.commonName).localeCompare(term(b.commonName)))
        .map(({ id, commonName }) => ({ id: id as string, name: term(commonName) }))}
      onPick={id => {
        const species = fruits.byId(id)
        // What was overruled for one fruit does not hold for another.
        if (species !== undefined) say({ species: species.id, set: {}, cultivar: '' })
      }}
    />
  )
  if (isMaker)
    return (
      <form className="ask sheet" onSubmit={event => event.preventDefault()}>
        {fruit}
      </form>
    )
  return (
    <form className="ask sheet" onSubmit={event => event.preventDefault()}>
      <fieldset>
        <legend>{t('whichTree.groups.fruit')}</legend>
        {fruit}
        <Pick
          label={t('whichTree.want')}
          value={question.wanted}
          options={(['named', 'any'] as const).map(id => ({ id, name: t(`whichTree.wants.${id}`) }))}
          onPick={wanted => say({ wanted })}
        />
        {question.wanted === 'named' && (
          <Field
            label={t('whichTree.cultivar')}
            value={cultivar}
            maxLength={120}
            onChange={said => {
              setCultivar(said)
              say({ cultivar: said })
            }}
          />
        )}
        <div className="ask-pair">
          <Choices
            label={t('whichTree.amount')}
            value={amount.kind}
            options={(['trees', 'area'] as const).map(id => ({ id, name: t(`whichTree.amounts.${id}`) }))}
            onPick={kind =>
              say({ amount: kind === 'trees' ? { kind, trees: 1 } : { kind, squareMetres: 400 } })
            }
          />
          {amount.kind === 'trees' ? (
            <NumberAsked
              label={t('whichTree.trees')}
              value={amount.trees}
              least={1}
              most={100_000}
              onSay={trees => say({ amount: { kind: 'trees', trees: Math.round(trees ?? 1) } })}
            />
          ) : (
            <NumberAsked
              label={t('whichTree.area', { unit: shown('m²').unit })}
              shown={shown('m²')}
              value={amount.squareMetres}
              least={1}
              most={10_000_000}
              step={50}
              onSay={squareMetres => say({ amount: { kind: 'area', squareMetres: squareMetres ?? 1 } })}
            />
          )}
        </div>
      </fieldset>

      <AskPlace climate={question.climate} onAsk={climate => say({ climate })} />

      <fieldset>
        <legend>{t('whichTree.groups.ground')}</legend>
        <Choices
          label={t('whichTree.where')}
          value={ground.kind}
          options={(['ground', 'container'] as const).map(id => ({ id, name: t(`whichTree.wheres.${id}`) }))}
          onPick={kind =>
            say({
              ground:
                kind === 'ground'
                  ? { kind, exposure: 'open', staked: true, covered: true }
                  : { kind, litres: 50, winter: 'outside' },
            })
          }
        />
        {ground.kind === 'container' ? (
          <>
            <NumberAsked
              label={t('whichTree.litres', { unit: shown('litres').unit })}
              shown={shown('litres')}
              value={ground.litres}
              least={1}
              most={2000}
              step={10}
              onSay={litres => say({ ground: { ...ground, litres: litres ?? 50 } })}
            />
            <Pick
              label={t('whichTree.winter')}
              value={ground.winter}
              options={(['outside', 'by a warm wall', 'moved inside'] as const).map(id => ({
                id,
                name: t(`whichTree.winters.${id}`),
              }))}
              onPick={winter => say({ ground: { ...ground, winter } })}
            />
          </>
        ) : (
          <>
            <Pick
              label={t('whichTree.exposure')}
              value={ground.exposure}
              options={(['sheltered', 'open', 'windy'] as const).map(id => ({
                id,
                name: t(`whichTree.exposures.${id}`),
              }))}
              onPick={exposure => say({ ground: { ...ground, exposure } })}
            />
            <Tick isOn={ground.staked} onTick={staked => say({ ground: { ...ground, staked } })}>
              {t('whichTree.staked')}
            </Tick>
            <Tick isOn={ground.covered} onTick={covered => say({ ground: { ...ground, covered } })}>
              {t('whichTree.covered')}
            </Tick>
          </>
        )}
        <Pick
          label={t('whichTree.partner')}
          value={question.partner}
          options={(['near', 'planted too', 'none'] as const).map(id => ({
            id,
            name: t(`whichTree.partners.${id}`),
          }))}
          onPick={partner => say({ partner })}
        />
        <NumberAsked
          label={t('whichTree.heightAtMost', { unit: shown('m').unit })}
          shown={shown('m')}
          value={question.heightAtMostMetres}
          least={0.3}
          most={40}
          step={0.5}
          ifEmpty={t('whichTree.noLimit')}
          onSay={heightAtMostMetres => say({ heightAtMostMetres })}
        />
      </fieldset>

      <fieldset>
        <legend>{t('whichTree.groups.wish')}</legend>
        <NumberAsked
          label={t('whichTree.yearsAhead')}
          value={question.yearsAhead}
          least={1}
          most={40}
          onSay={years => say({ yearsAhead: Math.round(years ?? 15) })}
        />
        <NumberAsked
          label={t('whichTree.fruitWithin')}
          value={question.firstFruitWithinYears}
          least={0.5}
          most={40}
          ifEmpty={t('whichTree.noLimit')}
          onSay={firstFruitWithinYears => say({ firstFruitWithinYears })}
        />
        <Tick isOn={question.wouldRework} onTick={wouldRework => say({ wouldRework })}>
          {t('whichTree.rework')}
        </Tick>
      </fieldset>

      <fieldset>
        <legend>{t('whichTree.groups.money')}</legend>
        <NumberAsked
          label={t('whichTree.worth', { unit: shown('a kg').unit })}
          shown={shown('a kg')}
          value={worthPerKg}
          least={0}
          most={10_000}
          step={0.5}
          onSay={fruitWorthPerKg =>
            say({ set: { ...question.set, fruitWorthPerKg: fruitWorthPerKg ?? worthPerKg } })
          }
        />
        <NumberAsked
          label={t('whichTree.spendAtMost')}
          value={question.spendAtMost}
          least={0}
          most={100_000_000}
          step={50}
          ifEmpty={t('whichTree.noLimit')}
          onSay={spendAtMost => say({ spendAtMost })}
        />
        <NumberAsked
          label={t('whichTree.interest')}
          value={Number((100 * question.interest).toPrecision(6))}
          least={0}
          most={50}
          onSay={percent => say({ interest: (percent ?? 5) / 100 })}
        />
      </fieldset>
    </form>
  )
}
