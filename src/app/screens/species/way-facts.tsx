import { useQuery } from '@tanstack/react-query'
import { Link } from '@tanstack/react-router'
import { type ReactNode, useMemo } from 'react'
import { Button } from 'react-aria-components'
import { useTranslation } from 'react-i18next'
import { methodById, type Species, type SpeciesWay, starterProtocol } from '../../../trade/facts/index.ts'
import { markOfMethod } from '../../../trade/index.ts'
import { look } from '../../data/queries.ts'
import { say } from '../../data/say.ts'
import { useNames } from '../../data/use-names.tsx'
import { useDone } from '../../parts/done.tsx'
import { Mark } from '../../pictures/marks/mark.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useTerm } from '../../text/use-term.ts'
import { tellingRates } from '../methods/telling-rates.ts'
import { Statement } from './statement.tsx'

/** One method as it is done with one fruit; beside the facts what the nursery's own batches taught. */
export function WayFacts({
  species,
  given,
  way,
  sources,
  children,
}: {
  readonly species: Species
  readonly given: Species
  readonly way: SpeciesWay
  readonly sources: readonly string[]
  readonly children: ReactNode
}) {
  const { t } = useTranslation()
  const term = useTerm()
  const format = useFormat()
  const done = useDone()
  const { nursery } = useNames()
  const { data: rates } = useQuery(look.rates())
  const { method, importance, role, trueToType, counts, measured, mist, notes } = way
  const kinds = nursery?.kinds.filter(kind => kind.species === species.id) ?? []
  const used = new Set(kinds.flatMap(kind => kind.ways.map(({ protocol }) => protocol)))
  const protocols = nursery?.protocols.filter(({ id, method: by }) => by === method && used.has(id)) ?? []
  const ids = new Set<string>(kinds.map(({ id }) => id))
  const learnt = tellingRates(
    (rates ?? []).filter(
      row =>
        row.method === method &&
        row.from === 'records' &&
        row.batches > 0 &&
        row.kind !== null &&
        ids.has(row.kind),
    ),
  )
  // As given, not as stated: what the nursery states follows into it, and leaves it again when it is struck.
  const starter = useMemo(() => starterProtocol(method, given), [method, given])
  const known = new Set<string>(nursery?.protocols.map(({ id }) => id))
  const write = async () => {
    const said = await say([{ kind: 'protocol-set/1', protocol: starter }])
    done.tell(t('species.protocol.kept', { name: term(starter.name) }), said)
  }
  const isTrue =
    typeof trueToType === 'string'
      ? t('species.trueToType.depends', { depends: trueToType })
      : t(`species.trueToType.${trueToType ? 'yes' : 'no'}`)
  return (
    <section className="sheet stack">
      <div>
        <h2 className="row">
          <Mark mark={markOfMethod(method)} size={28} />
          <Link to="/methods/$method" params={{ method }}>
            {term(methodById(method).label)}
          </Link>
        </h2>
        <p className="soft small">
          {[t(`species.importance.${importance}`), role, isTrue].join('; ')}.{' '}
          {t('species.counts', { counts })}
        </p>
      </div>
      {children}
      {mist !== undefined && <Statement said={mist} sources={sources} />}
      {notes.map(note => (
        <Statement key={note.text} said={note} sources={sources} />
      ))}
      {learnt.length > 0 && (
        <div>
          <h3>{t('species.groups.yours')}</h3>
          <ul>
            {learnt.map(row => (
              <li key={`${row.kind} ${row.protocol}`}>
                {t('species.learnt', {
                  kind: row.kindName ?? row.protocolName,
                  step: term(row.stepName),
                  share: format.share(row.mean),
                  range: format.shareRange(row.low, row.high),
                  batches: format.number(row.batches),
                })}
              </li>
            ))}
          </ul>
        </div>
      )}
      {protocols.length > 0 && (
        <p className="small">
          {t('species.groups.protocols')}:{' '}
          {protocols.map(({ id, name }, i) => (
            <span key={id}>
              {i > 0 && ', '}
              <Link to="/protocols/$protocol" params={{ protocol: id }}>
                {term(name)}
              </Link>
            </span>
          ))}
        </p>
      )}
      {protocols.length === 0 && nursery !== undefined && !known.has(starter.id) && (
        <p>
          <Button className="plain" onPress={() => void write()}>
            {t('species.protocol.write')}
          </Button>{' '}
          <span className="soft small">{t('species.protocol.says')}</span>
        </p>
      )}
      {protocols.length === 0 && known.has(starter.id) && (
        <p className="small">
          {t('species.groups.protocols')}:{' '}
          <Link to="/protocols/$protocol" params={{ protocol: starter.id }}>
            {term(starter.name)}
          </Link>
        </p>
      )}
      {measured.length > 0 && (
        <details>
          <summary>{t('species.groups.measured')}</summary>
          <ul className="small">
            {measured.map(({ share, condition, source }) => (
              <li key={`${share} ${condition} ${source}`}>
                {t('species.measured', { share: format.share(share), condition: format.sentence(condition) })}{' '}
                <span className="soft">[{format.number(sources.indexOf(source) + 1)}]</span>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  )
}
