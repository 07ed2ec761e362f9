import type { ReactElement } from 'react'
import type { WordTable } from '#golf/round/word-table.ts'

/** A table of words and figures; one that is wider than the screen is carried sideways in its own frame. */
export function FigureTable(props: { readonly caption: string; readonly table: WordTable }): ReactElement {
  const { caption, table } = props
  const { columns, rows } = table
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it is carried by keys too (WCAG 2.2, 2.1.1).
    <section className="figure-frame" aria-label={`${caption}: table`} tabIndex={0}>
      <table className="figure-table">
        <thead>
          <tr>
            {columns.map(({ heading, isFigure }) =>
              heading === '' ? (
                <td key={heading} />
              ) : (
                <th key={heading} scope="col" className={isFigure ? 'number' : ''}>
                  {heading}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {rows.map(([first, ...rest]) => (
            <tr key={[first, ...rest].join()}>
              <th scope="row" className={/^[\d-]+$/.test(first ?? '') ? 'unbroken' : undefined}>
                {first}
              </th>
              {columns.slice(1).map(({ heading, isFigure }, index) => (
                <td key={heading} className={isFigure ? 'number' : ''}>
                  {rest[index]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
