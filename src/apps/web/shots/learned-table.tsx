import { type ReactElement, useId, useState } from 'react'
import type { LearnedFigure, LearnedRow } from '#golf/player/learned-words.ts'
import type { Reader } from '../desk/desk.ts'
import { unbroken, unitSign } from '../words.ts'

/** What shots made of the clubs: before and after, and the range where it lies nine times in ten. */
export function LearnedTable(props: {
  readonly rows: readonly LearnedRow[]
  readonly reader: Reader
}): ReactElement {
  const { rows, reader } = props
  const [isAll, setIsAll] = useState(false)
  const id = useId()
  const hit = rows.filter(({ shots }) => shots > 0)
  const shown = isAll ? rows : hit
  return (
    <>
      <p className="table-note" id={id}>
        Before and after, and where it lies nine times in ten. Left and right: the spread of direction on that
        side of the aim.
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it is carried by keys too (WCAG 2.2, 2.1.1). */}
      <section className="figure-frame" aria-labelledby={id} tabIndex={0}>
        <table className="profile-table">
          <thead>
            <tr>
              <th scope="col">Club</th>
              <th scope="col">Carry, {unitSign(reader)}</th>
              <th scope="col">Left, °</th>
              <th scope="col">Right, °</th>
              <th scope="col">Mishits, %</th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ club, shots, carry, left, right, mishits }) => (
              <tr key={club}>
                <th scope="row">
                  {unbroken(club)}
                  <small>
                    {shots === 0 ? 'follows the others' : shots === 1 ? '1 shot' : `${shots} shots`}
                  </small>
                </th>
                <FigureCell figure={carry} />
                <FigureCell figure={left} />
                <FigureCell figure={right} />
                <FigureCell figure={mishits} />
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {rows.length > hit.length && (
        <button type="button" className="quiet" onClick={() => setIsAll(!isAll)}>
          {isAll ? 'Only the clubs that were hit' : `All ${rows.length} clubs`}
        </button>
      )}
    </>
  )
}

function FigureCell({ figure }: { readonly figure: LearnedFigure }): ReactElement {
  return (
    <td>
      <Change figure={figure} />
      {figure.between !== null && (
        <small>
          {figure.between[0]} to {figure.between[1]}
        </small>
      )}
      {figure.wasGuess && <small>was a guess</small>}
    </td>
  )
}

function Change({ figure: { before, after } }: { readonly figure: LearnedFigure }): ReactElement {
  if (before === after) return <>{after}</>
  return (
    <>
      {before}&nbsp;→&nbsp;{after}
    </>
  )
}
