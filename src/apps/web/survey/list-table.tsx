import type { ReactElement } from 'react'

/** A short list of typed rows with three cells each, and one more row to type in at its end. */
export function ListTable(props: {
  readonly caption: string
  /** What one row is: `Tier`. */
  readonly name: string
  readonly titles: readonly string[]
  readonly rows: readonly (readonly string[])[]
  /** `what` was changed: `3, 1` is the second cell of the fourth row. */
  readonly onRows: (what: string, rows: readonly (readonly string[])[]) => void
}): ReactElement {
  const { name, titles, rows, onRows } = props
  const blank = titles.map(() => '')
  return (
    <table className="corner-table list-table">
      <caption>{props.caption}.</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          {titles.map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
          <th scope="col">
            <span className="unseen">Take away</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {[...rows, blank].map((row, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the rows have no other name.
          <tr key={index}>
            <th scope="row">{index + 1}</th>
            {titles.map((title, cell) => (
              <td key={title}>
                <input
                  type="text"
                  inputMode="decimal"
                  autoComplete="off"
                  aria-label={`${name} ${index + 1}, ${title}`}
                  value={row[cell] ?? ''}
                  onChange={(event) =>
                    onRows(
                      `${index}, ${cell}`,
                      [...rows, blank].with(index, row.with(cell, event.target.value)),
                    )
                  }
                />
              </td>
            ))}
            <td className="corner-buttons">
              {index < rows.length && (
                <button
                  type="button"
                  className="quiet"
                  aria-label={`Remove ${name.toLowerCase()} ${index + 1}`}
                  onClick={() => onRows('remove', rows.toSpliced(index, 1))}
                >
                  ×
                </button>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
