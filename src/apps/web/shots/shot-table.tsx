import { type ReactElement, useState } from 'react'
import { clubWords } from '#golf/player/club-words.ts'
import type { Reader } from '../desk/desk.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { groundWord, shortDate, unbroken, unitSign } from '../words.ts'
import type { EnteredShot } from './shot-sheet.ts'
import { exactFigure, LIE_CHOICES, shotWords, sideFigure } from './shot-words.ts'

/** Every shot of the sheet, the newest first, each with a way to take it away. */
export function ShotTable(props: {
  readonly shots: readonly EnteredShot[]
  readonly reader: Reader
  readonly onRemove: (shot: EnteredShot) => void
}): ReactElement {
  const { shots, reader, onRemove } = props
  const [isAll, setIsAll] = useState(false)
  const newest = shots.toReversed()
  const rows = isAll ? newest : newest.slice(0, DESK_SETTINGS.shotRows)
  if (shots.length === 0) return <p className="silent">None yet. Tap where a ball came down.</p>
  return (
    <>
      <table className="shot-table">
        <caption className="unseen">Shots put down, the newest first</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Club</th>
            <th scope="col">Lie, day</th>
            <th scope="col">{unitSign(reader)}</th>
            <th scope="col">Off the line</th>
            <th scope="col">
              <span className="unseen">Take away</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((shot, index) => (
            <tr key={shot.id}>
              <td className="number">{shots.length - index}</td>
              <th scope="row">
                {unbroken(clubWords(shot.club))}
                {shot.strike === 'mishit' && <small>mishit</small>}
              </th>
              <td>
                {lieWords(shot)}
                {shot.date !== null && <small>{shortDate(shot.date)}</small>}
              </td>
              <td className="number">
                <Lengths shot={shot} reader={reader} />
              </td>
              <td>
                {shot.offlineMetres === null ? '' : sideFigure(shot.offlineMetres, reader)}
                {shot.finish !== undefined && (
                  <small>
                    hole {shot.finish.holeRef}, {groundWord(shot.finish.ground)}
                  </small>
                )}
              </td>
              <td>
                <button
                  type="button"
                  className="quiet"
                  aria-label={`Remove shot ${shots.length - index}: ${shotWords(shot, reader)}`}
                  onClick={() => onRemove(shot)}
                >
                  Remove
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {newest.length > DESK_SETTINGS.shotRows && (
        <button type="button" className="quiet" onClick={() => setIsAll(!isAll)}>
          {isAll ? `The last ${DESK_SETTINGS.shotRows} only` : `All ${shots.length} shots`}
        </button>
      )}
    </>
  )
}

function Lengths({ shot, reader }: { readonly shot: EnteredShot; readonly reader: Reader }): ReactElement {
  const { carryMetres, totalMetres } = shot
  if (carryMetres === null)
    return (
      <>
        {totalMetres !== null && exactFigure(totalMetres, reader)}
        <small>in all</small>
      </>
    )
  return (
    <>
      {exactFigure(carryMetres, reader)}
      {totalMetres !== null && <small>{exactFigure(totalMetres, reader)} in all</small>}
    </>
  )
}

function lieWords({ lie }: EnteredShot): string {
  return LIE_CHOICES.find((one) => one.lie === lie && one.value !== 'mat')?.name ?? lie ?? ''
}
