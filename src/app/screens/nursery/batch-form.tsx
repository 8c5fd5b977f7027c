import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { useTranslation } from 'react-i18next'
import { uuidv7 } from 'uuidv7'
import { finishedStep } from '../../../record/index.ts'
import type { PersonId } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { deviceDay } from '../../data/today.ts'
import { useNames } from '../../data/use-names.tsx'
import { whoNow } from '../../data/who.ts'
import { EntryForm } from '../../parts/entry-form.tsx'
import { Field } from '../../parts/field.tsx'
import { NumberAsked } from '../../parts/number-asked.tsx'
import { Pick } from '../../parts/pick.tsx'
import { nextBatchName } from '../this-week/deed.ts'
import { type BatchTyped, batchLacks, batchStarted, isAnyBought, type Wood, woodsOf } from './batch-typed.ts'

/** A batch that is begun by hand, or that stood before the record knew of it. */
export function BatchForm({ onClose }: { readonly onClose: () => void }) {
  const { t } = useTranslation()
  const { nursery, protocols, kinds } = useNames()
  const { data: alive = [] } = useQuery(look.batchesAlive())
  const { data: mothers = [] } = useQuery(look.mothers())
  const today = nursery?.today ?? deviceDay()
  const [kind, setKind] = useState('')
  const [way, setWay] = useState('')
  const [typed, setTyped] = useState<BatchTyped>(() => ({
    name: nextBatchName(
      [...alive.map(({ name }) => name), ...(nursery?.lastBatchName == null ? [] : [nursery.lastBatchName])],
      today,
    ),
    number: null,
    bench: '',
    startedOn: today,
    step: '',
    since: today,
    woodFrom: {},
    rootstockFrom: '',
    supplier: '',
  }))
  const change = (part: Partial<BatchTyped>) => setTyped({ ...typed, ...part })
  const ofKind = kinds.get(kind)
  const protocol = protocols.get(way)
  const first = protocol?.steps[0]?.id ?? ''
  const choose = (id: string, by = kinds.get(id)?.ways[0]?.protocol ?? '') => {
    setKind(id)
    setWay(by)
    change({ step: protocols.get(by)?.steps[0]?.id ?? '', woodFrom: {}, rootstockFrom: '' })
  }
  const lack = batchLacks(typed, first, today)
  const lacks =
    ofKind === undefined
      ? t('nursery.batch.needKind')
      : protocol === undefined
        ? t('nursery.batch.needWay')
        : lack === null
          ? null
          : t(`nursery.batch.need.${lack}`)
  const stocks = ofKind?.ways.find(one => one.protocol === way)?.rootstocks ?? []
  const woods = ofKind === undefined || protocol === undefined ? [] : woodsOf(ofKind, protocol.takes)
  const labelOf = ({ cultivar, isInterstem }: Wood): string =>
    woods.length === 1
      ? t('nursery.batch.materialFrom')
      : t(isInterstem ? 'nursery.batch.interstemFrom' : 'nursery.batch.woodFrom', {
          cultivar: nursery?.cultivars.find(({ id }) => id === cultivar)?.name ?? '',
        })
  const place =
    protocol?.steps.find(({ id }) => id === typed.step)?.place ?? protocol?.steps.at(-1)?.place ?? null
  const benches = nursery?.benches ?? []
  const none = { id: '', name: t('nursery.batch.notSaid') }
  const bought = { id: 'bought', name: t('nursery.batch.bought') }
  return (
    <EntryForm
      title={t('nursery.batch.add')}
      bodies={
        lacks === null && ofKind !== undefined && protocol !== undefined && typed.number !== null
          ? [
              batchStarted(
                { ...typed, number: typed.number },
                { id: uuidv7(), kind: ofKind, protocol, by: whoNow() as PersonId | null },
              ),
            ]
          : null
      }
      on={typed.startedOn || today}
      need={lacks ?? ''}
      told={t('nursery.kept', { name: typed.name.trim() })}
      onClose={onClose}
    >
      {kinds.size === 0 && <p>{t('nursery.batch.noKind')}</p>}
      <Pick
        label={t('nursery.batch.kind')}
        value={kind}
        options={[
          { id: '', name: t('nursery.kind.choose') },
          ...[...kinds.values()].map(({ id, name }) => ({ id: id as string, name })),
        ]}
        onPick={id => choose(id)}
      />
      {ofKind !== undefined && ofKind.ways.length > 1 && (
        <Pick
          label={t('nursery.batch.way')}
          value={way}
          options={ofKind.ways.map(({ protocol: id }) => ({
            id: id as string,
            name: protocols.get(id)?.name ?? id,
          }))}
          onPick={id => choose(kind, id)}
        />
      )}
      <div className="form-grid">
        <NumberAsked
          label={t('nursery.batch.number')}
          value={typed.number}
          least={1}
          most={10_000_000}
          isWhole
          ifEmpty=""
          onSay={number => change({ number })}
        />
        <Field label={t('nursery.batch.name')} value={typed.name} onChange={name => change({ name })} />
        <Field
          type="date"
          label={t('nursery.batch.startedOn')}
          value={typed.startedOn}
          onChange={startedOn => change({ startedOn })}
        />
      </div>
      {protocol !== undefined && (
        <>
          <div className="form-grid">
            <Pick
              label={t('nursery.batch.step')}
              value={typed.step}
              options={[
                ...protocol.steps.map(({ id, name }) => ({ id: id as string, name })),
                { id: finishedStep as string, name: t('trade.finished') },
              ]}
              onPick={step => change({ step, since: typed.since || today })}
            />
            {typed.step !== first && (
              <Field
                type="date"
                label={t('nursery.batch.since')}
                value={typed.since}
                onChange={since => change({ since })}
              />
            )}
            <Pick
              label={t('nursery.batch.bench')}
              value={typed.bench}
              options={[
                none,
                ...[...benches]
                  .sort((a, b) => Number(b.place === place) - Number(a.place === place))
                  .map(({ id, name }) => ({ id: id as string, name })),
              ]}
              onPick={bench => change({ bench })}
            />
          </div>
          {typed.step !== first && <p className="soft small">{t('nursery.batch.takenOverSays')}</p>}
          <div className="form-grid">
            {woods.map(wood => (
              <Pick
                key={wood.key}
                label={labelOf(wood)}
                value={typed.woodFrom[wood.key] ?? ''}
                options={[
                  none,
                  ...mothers
                    .filter(
                      ({ mother, retired }) =>
                        !retired &&
                        (wood.cultivar === null
                          ? mother.rootstockKind === kind
                          : mother.cultivar === wood.cultivar && mother.rootstockKind === null),
                    )
                    .map(({ mother }) => ({ id: `mother ${mother.id}`, name: mother.name })),
                  bought,
                ]}
                onPick={from => change({ woodFrom: { ...typed.woodFrom, [wood.key]: from } })}
              />
            ))}
            {protocol.takes.some(({ what }) => what === 'rootstock') && (
              <Pick
                label={t('nursery.batch.rootstockFrom')}
                value={typed.rootstockFrom}
                options={[
                  none,
                  ...alive
                    .filter(row => row.finished > 0 && stocks.includes(row.kind))
                    .map(row => ({ id: `batch ${row.id}`, name: `${row.name}, ${row.kindName}` })),
                  bought,
                ]}
                onPick={rootstockFrom => change({ rootstockFrom })}
              />
            )}
            {isAnyBought(typed) && (
              <Field
                label={t('nursery.batch.supplier')}
                value={typed.supplier}
                onChange={supplier => change({ supplier })}
              />
            )}
          </div>
        </>
      )}
    </EntryForm>
  )
}
