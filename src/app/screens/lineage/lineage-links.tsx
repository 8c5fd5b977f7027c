import { useTranslation } from 'react-i18next'
import type { LineageView } from '../../../api/index.ts'
import { Behind } from '../../parts/behind.tsx'
import { useFormat } from '../../text/use-format.tsx'
import { useSayPart } from '../../text/use-say-part.ts'

type Ref = LineageView['of']

/** The family link by link: what went from where into what, when, and who said so. */
export function LineageLinks({ view }: { readonly view: LineageView }) {
  const { t } = useTranslation()
  const format = useFormat()
  const keyOf = ({ what, id }: Ref) => `${what} ${id}`
  const names = new Map(view.things.map(({ what, id, name }) => [keyOf({ what, id }), name]))
  const nameOf = (ref: Ref) => `${t(`lineage.what.${ref.what}`)} ${names.get(keyOf(ref)) ?? ref.id}`
  const partOf = useSayPart()
  if (view.links.length === 0) return null
  return (
    <details className="sheet">
      <summary className="strong">{t('lineage.links.title')}</summary>
      <div className="lineage-links">
        <table>
          <thead>
            <tr>
              {(['from', 'number', 'to', 'on'] as const).map(column => (
                <th key={column} scope="col">
                  {t(`lineage.links.${column}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {[...view.links]
              .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
              .map(({ from, to, number, as, on, entries }) => (
                <tr key={`${keyOf(from)} ${keyOf(to)} ${as}`}>
                  <td>{nameOf(from)}</td>
                  <td>
                    <Behind
                      name={`${keyOf(from)} ${keyOf(to)} ${as}`}
                      says={t('lineage.links.went', { number: format.number(number), as: partOf(as) })}
                      entries={entries}
                    />
                  </td>
                  <td>{nameOf(to)}</td>
                  <td>{format.fullDay(on)}</td>
                </tr>
              ))}
          </tbody>
        </table>
      </div>
    </details>
  )
}
