import { useFormat } from '../../text/use-format.tsx'

/** The numbers of a picture. Columns of numbers stand to the right. */
export interface Numbers {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly (string | number)[])[]
}

export function NumbersTable({ title, numbers }: { readonly title: string; readonly numbers: Numbers }) {
  const { locale } = useFormat()
  const isNumber = numbers.columns.map((_, index) =>
    numbers.rows.every(row => typeof row[index] === 'number'),
  )
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className="numbers-scroll" tabIndex={0} aria-label={title}>
      <table>
        <thead>
          <tr>
            {numbers.columns.map((column, index) => (
              <th key={column} scope="col" className={isNumber[index] ? 'number' : undefined}>
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {numbers.rows.map((row, place) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: rows of a table of numbers have no other name
            <tr key={place}>
              {row.map((cell, index) => (
                <td key={numbers.columns[index]} className={isNumber[index] ? 'number' : undefined}>
                  {typeof cell === 'number'
                    ? cell.toLocaleString(locale, { maximumFractionDigits: 2 })
                    : cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
