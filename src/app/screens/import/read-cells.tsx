import { useTranslation } from 'react-i18next'
import type { ReadCell } from '../../../api/index.ts'
import { useFormat } from '../../text/use-format.tsx'

/** Every cell that could not be read as it stands, with what is wrong and what was done. */
export function ReadCells({ cells }: { readonly cells: readonly ReadCell[] }) {
  const { t } = useTranslation()
  const format = useFormat()
  if (cells.length === 0) return null
  const title = t('imports.cells', { count: cells.length, shown: format.number(cells.length) })
  return (
    <details className="sheet" open={cells.length <= 12}>
      <summary>{title}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <section className="cells" tabIndex={0} aria-label={title}>
        <table>
          <thead>
            <tr>
              {(['where', 'said', 'wrong', 'done'] as const).map(key => (
                <th key={key} scope="col">
                  {t(`imports.cell.${key}`)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {cells.map(({ file, sheet, row, column, header, said, wrong, done, rowLost }) => (
              <tr key={`${file} ${sheet} ${row} ${column} ${wrong}`}>
                <td>
                  {t('imports.where', { file: sheet ?? file, row: format.number(row), column })}
                  <span className="soft"> {header}</span>
                </td>
                <td>{said}</td>
                <td>{wrong}</td>
                <td className={rowLost ? 'warn' : undefined}>{done}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  )
}
