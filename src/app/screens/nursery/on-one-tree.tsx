import { useTranslation } from 'react-i18next'
import { MOST_CULTIVARS } from '../../../trade/facts/index.ts'
import type { Cultivar } from '../../../trade/index.ts'
import { useFruits } from '../../data/use-fruits.ts'
import { Field } from '../../parts/field.tsx'
import { ListAsked } from '../../parts/list-asked.tsx'
import { useTerm } from '../../text/use-term.ts'
import { cultivarCalled, type KindTyped } from './kind-typed.ts'

/** What else is worked on one stock: further cultivars, and a piece of another between. */
export function OnOneTree({
  typed: { species, others, interstem },
  cultivars,
  onChange,
}: {
  readonly typed: KindTyped
  readonly cultivars: readonly Cultivar[]
  readonly onChange: (part: Pick<KindTyped, 'others'> | Pick<KindTyped, 'interstem'>) => void
}) {
  const { t } = useTranslation()
  return (
    <div className="stack on-one-tree">
      <ListAsked
        label={t('nursery.kind.others')}
        says={t('nursery.kind.othersSays')}
        rows={others.map(name => ({ name }))}
        add={t('nursery.kind.addOther')}
        next={() => (others.length + 1 < MOST_CULTIVARS ? { name: '' } : null)}
        called={({ name }) => name}
        onChange={rows => onChange({ others: rows.map(({ name }) => name) })}
      >
        {({ name }, change) => (
          <div className="field">
            <Field
              label={t('nursery.kind.cultivar')}
              value={name}
              onChange={said => change({ name: said })}
            />
            <KnownAs name={name} species={species} cultivars={cultivars} />
          </div>
        )}
      </ListAsked>
      <div className="field">
        <Field
          label={t('nursery.kind.interstem')}
          placeholder={t('nursery.kind.noInterstem')}
          value={interstem}
          onChange={said => onChange({ interstem: said })}
        />
        <KnownAs name={interstem} species={species} cultivars={cultivars} />
        <p className="soft small">{t('nursery.kind.interstemSays')}</p>
      </div>
    </div>
  )
}

/** Which cultivar a name is taken for, where that is not one of the same fruit. */
function KnownAs({
  name,
  species,
  cultivars,
}: {
  readonly name: string
  readonly species: string
  readonly cultivars: readonly Cultivar[]
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const fruits = useFruits()
  const called = cultivarCalled(cultivars, species, name.trim(), true)
  if (name.trim() === '' || called?.species === species) return null
  const fruit = called === undefined ? undefined : fruits.byId(called.species)
  return (
    <p className="soft small">
      {called === undefined
        ? t('nursery.kind.newHere')
        : t('nursery.kind.ofFruit', { fruit: fruit === undefined ? called.species : term(fruit.commonName) })}
    </p>
  )
}
