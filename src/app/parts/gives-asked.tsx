import { useTranslation } from 'react-i18next'
import type { Supply } from '../../record/index.ts'
import { monthsOfSupply, usualYield } from '../../trade/facts/index.ts'
import { Material } from '../../trade/index.ts'
import { useFormat } from '../text/use-format.tsx'
import { ListAsked } from './list-asked.tsx'
import { MonthsField } from './months-field.tsx'
import { NumberAsked } from './number-asked.tsx'
import { Pick } from './pick.tsx'

/** What a grown tree gives of a material that none of her kinds takes. */
const usualOf = (material: Material): Supply => ({
  material,
  perYear: usualYield(material),
  perWeek: null,
  months: monthsOfSupply([]),
})

const isSame = (one: Supply, other: Supply): boolean =>
  one.perYear === other.perYear &&
  one.perWeek === other.perWeek &&
  String(one.months) === String(other.months)

/** What a mother tree may give: each material with its months, how much in a year, and at most in a week. */
export function GivesAsked({
  gives,
  usually,
  onChange,
}: {
  readonly gives: readonly Supply[]
  /** What her kinds take of her. */
  readonly usually: readonly Supply[]
  readonly onChange: (gives: readonly Supply[]) => void
}) {
  const { t } = useTranslation()
  const format = useFormat()
  const isThere = (material: Material) => gives.some(one => one.material === material)
  const name = (material: Material) => t(`trade.material.${material}`)
  const usual = (material: Material) => usually.find(one => one.material === material) ?? usualOf(material)
  const free = [...usually.map(({ material }) => material), ...Material.options].find(one => !isThere(one))
  return (
    <ListAsked
      label={t('mothers.giving.title')}
      says={t('mothers.giving.says')}
      rows={gives}
      add={t('mothers.giving.add')}
      next={() => (free === undefined ? null : usual(free))}
      called={({ material, months }) => `${name(material)}, ${format.months(months)}`}
      onChange={onChange}
    >
      {(supply, change) => {
        const { material, months, perYear, perWeek } = supply
        return (
          <>
            <div className="form-grid">
              <Pick
                label={t('mothers.giving.what')}
                value={material}
                options={Material.options
                  .filter(one => one === material || !isThere(one))
                  .map(id => ({ id, name: name(id) }))}
                // What was typed stays; what was only usual of the one gives way to what is usual of the other.
                onPick={next => change(isSame(supply, usual(material)) ? usual(next) : { material: next })}
              />
              <NumberAsked
                label={t('mothers.giving.perYear')}
                value={perYear}
                least={0}
                onSay={value => value !== null && change({ perYear: value })}
              />
              <NumberAsked
                label={t('mothers.giving.perWeek')}
                value={perWeek}
                least={0}
                ifEmpty={t('mothers.giving.noBound')}
                onSay={value => change({ perWeek: value })}
              />
            </div>
            <div className="field">
              <span className="field-label">{t('mothers.giving.months')}</span>
              <MonthsField
                label={`${t('mothers.giving.months')}: ${name(material)}`}
                months={months}
                onChange={next => change({ months: next })}
              />
            </div>
          </>
        )
      }}
    </ListAsked>
  )
}
