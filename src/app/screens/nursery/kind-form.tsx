import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { ONE_UNION } from '../../../trade/facts/index.ts'
import { type Kind, type KindId, sameName } from '../../../trade/index.ts'
import { useFruits } from '../../data/use-fruits.ts'
import { useNames } from '../../data/use-names.tsx'
import { Choices } from '../../parts/choices.tsx'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { type KindTyped, kindBodies, NEW_STOCK, namesOf, typedOf, unionsOf } from './kind-typed.ts'
import { OnOneTree } from './on-one-tree.tsx'
import { Several } from './several.tsx'
import { isSameUnions, waysOffered } from './ways-offered.ts'

const PRODUCTS = ['tree', 'rootstock'] as const

/** A fruit that is sold or a rootstock that is raised: its cultivars, the ways to make it, what it stands on, its price. */
export function KindForm({ kind, onClose }: { readonly kind: Kind | null; readonly onClose: () => void }) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const fruits = useFruits()
  const { nursery } = useNames()
  const ground = {
    fruits,
    cultivars: nursery?.cultivars ?? [],
    kinds: nursery?.kinds ?? [],
    protocols: nursery?.protocols ?? [],
  }
  const usualWay = (species: string, product: KindTyped['product'], cultivar: string): readonly string[] => {
    const ways = waysOffered(ground, species, product)
    // A named cultivar is not raised from seed.
    const fits = ways.filter(({ method }) => product === 'rootstock' || cultivar === '' || method !== 'seed')
    return (fits[0] ?? ways[0]) === undefined ? [] : [(fits[0] ?? ways[0])!.protocol]
  }
  const [typed, setTyped] = useState<KindTyped>(() =>
    kind === null
      ? {
          product: 'tree',
          species: '',
          cultivar: '',
          others: [],
          interstem: '',
          name: '',
          size: '',
          price: null,
          ways: [],
          rootstock: ground.kinds.find(({ form }) => form === 'rootstock')?.id ?? 'new',
          boughtAt: null,
          weeksNotice: NEW_STOCK.weeksNotice,
        }
      : typedOf(kind, ground.cultivars),
  )
  const before = kind === null ? ONE_UNION : unionsOf(typedOf(kind, ground.cultivars))
  const offeredFor = (one: KindTyped) => {
    const unions = unionsOf(one)
    const kept = kind !== null && isSameUnions(before, unions) ? kind.ways : []
    return waysOffered(
      ground,
      one.species,
      one.product,
      unions,
      kept.map(({ protocol }) => protocol),
    )
  }
  const offered = offeredFor(typed)
  const change = (part: Partial<KindTyped>) => {
    const next = { ...typed, ...part }
    if (part.ways !== undefined || isSameUnions(unionsOf(typed), unionsOf(next))) return setTyped(next)
    // The same methods, written for so many unions.
    const among = offeredFor(next)
    const same = among.filter(({ method }) => chosen.some(one => one.method === method))
    setTyped({ ...next, ways: (same.length > 0 ? same : among.slice(0, 1)).map(({ protocol }) => protocol) })
  }
  const chosen = offered.filter(({ protocol }) => typed.ways.includes(protocol))
  const stocks = ground.kinds.filter(({ form }) => form === 'rootstock')
  const ofFruit = stocks.filter(({ species }) => species === typed.species)
  const isWorked = chosen.some(({ onRootstock }) => onRootstock)
  const isNamed = typed.cultivar.trim() !== ''
  const needsCultivar = typed.product === 'tree' && !isNamed && chosen.some(({ method }) => method !== 'seed')
  const twice = namesOf(typed).find((name, at, all) => all.findIndex(one => sameName(one, name)) < at)
  const isSeveral = !isSameUnions(unionsOf(typed), ONE_UNION)
  const lacks =
    typed.species === ''
      ? t('nursery.kind.needFruit')
      : twice !== undefined
        ? t('nursery.kind.needOther', { name: twice })
        : isSeveral && offered.length === 0
          ? t('nursery.kind.needUnion')
          : chosen.length === 0
            ? t('nursery.kind.needWay')
            : needsCultivar
              ? t('nursery.kind.needCultivar')
              : typed.price === null
                ? t('nursery.kind.needPrice')
                : null
  const bodies = lacks === null ? kindBodies(ground, typed, kind) : null
  const named =
    bodies?.flatMap(body => (body.kind === 'kind-set/1' ? [body.kindOfTree.name] : [])).at(-1) ?? ''
  return (
    <EntryForm
      title={kind === null ? t('nursery.kind.add') : t('nursery.changeOf', { name: kind.name })}
      bodies={bodies}
      need={lacks ?? ''}
      told={t('nursery.kept', { name: named })}
      onClose={onClose}
    >
      {kind === null && (
        <>
          <Choices
            label={t('nursery.kind.product.label')}
            value={typed.product}
            options={PRODUCTS.map(id => ({ id, name: t(`nursery.kind.product.${id}`) }))}
            onPick={product =>
              change({ product, ways: usualWay(typed.species, product, typed.cultivar.trim()) })
            }
          />
          <Pick
            label={t('nursery.kind.fruit')}
            value={typed.species}
            options={[
              { id: '', name: t('nursery.kind.choose') },
              ...[...fruits.all]
                .map(({ id, commonName }) => ({ id: id as string, name: term(commonName) }))
                .sort((a, b) => a.name.localeCompare(b.name, format.locale)),
            ]}
            onPick={species => {
              const own = stocks.find(stock => stock.species === species)
              change({
                species,
                ways: usualWay(species, typed.product, typed.cultivar.trim() || 'any'),
                rootstock: own?.id ?? 'new',
              })
            }}
          />
        </>
      )}
      <div className="form-grid">
        <Field
          label={t(typed.product === 'tree' ? 'nursery.kind.cultivar' : 'nursery.kind.stockName')}
          value={typed.cultivar}
          onChange={cultivar => change({ cultivar })}
        />
        <Field
          label={t('nursery.kind.size')}
          placeholder={t('nursery.kind.sizeHint')}
          value={typed.size}
          onChange={size => change({ size })}
        />
        <NumberAsked
          label={t('nursery.kind.price')}
          value={typed.price}
          least={0}
          ifEmpty=""
          onSay={price => change({ price })}
        />
      </div>
      {typed.product === 'tree' && <p className="soft small">{t('nursery.kind.cultivarSays')}</p>}
      {typed.product === 'tree' && typed.species !== '' && (
        <details open={!isSameUnions(before, ONE_UNION) || undefined}>
          <summary>{t('nursery.kind.onOneTree')}</summary>
          <OnOneTree typed={typed} cultivars={ground.cultivars} onChange={change} />
        </details>
      )}
      {isSeveral && offered.length === 0 && <p className="warn">{t('nursery.kind.needUnion')}</p>}
      {offered.length > 0 && (
        <Several
          label={t('nursery.kind.ways')}
          options={offered.map(({ protocol, name, fromFacts }) => ({
            id: protocol as string,
            name: t(fromFacts === null ? 'nursery.kind.wayOwn' : 'nursery.kind.wayFacts', {
              way: term(name),
            }),
          }))}
          chosen={typed.ways}
          onChoose={ways => change({ ways })}
        />
      )}
      {isWorked && (
        <>
          <Pick
            label={t('nursery.kind.rootstock')}
            value={typed.rootstock as string}
            options={[
              ...[...ofFruit, ...stocks.filter(stock => !ofFruit.includes(stock))].map(({ id, name }) => ({
                id: id as string,
                name,
              })),
              { id: 'new', name: t('nursery.kind.newStock') },
            ]}
            onPick={id => change({ rootstock: id as KindId | 'new' })}
          />
          {typed.rootstock === 'new' && (
            <p className="soft small">
              {t('nursery.kind.newStockSays', {
                price: format.money(NEW_STOCK.price),
                weeks: format.number(NEW_STOCK.weeksNotice),
              })}
            </p>
          )}
        </>
      )}
      <details>
        <summary>{t('nursery.kind.more')}</summary>
        <div className="form-grid">
          <Field
            label={t('nursery.kind.calledSo')}
            placeholder={t('nursery.kind.calledSoEmpty')}
            value={typed.name}
            onChange={name => change({ name })}
          />
          <NumberAsked
            label={t('nursery.kind.boughtAt')}
            value={typed.boughtAt}
            least={0}
            ifEmpty={t('nursery.kind.notBought')}
            onSay={boughtAt => change({ boughtAt })}
          />
          <NumberAsked
            label={t('nursery.kind.notice')}
            value={typed.weeksNotice}
            least={0}
            most={104}
            isWhole
            onSay={weeks => weeks !== null && change({ weeksNotice: weeks })}
          />
        </div>
      </details>
    </EntryForm>
  )
}
