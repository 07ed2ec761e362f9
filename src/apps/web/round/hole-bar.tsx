import type { ReactElement } from 'react'
import type { KeptRound } from '#golf/round/kept-round.ts'
import { holeOfLog } from '#golf/round/round-of-log.ts'
import { holePlace } from './places.ts'

/** Which hole is written down, and the way to the others. */
export function HoleBar(props: {
  readonly round: KeptRound
  readonly refs: readonly string[]
  readonly holeRef: string
}): ReactElement {
  const { round, refs, holeRef } = props
  const { id } = round.facts
  const at = refs.indexOf(holeRef)
  const go = (ref: string | undefined): void => {
    if (ref !== undefined) location.hash = holePlace(id, ref)
  }
  const written = (ref: string): string => {
    const { strokes, putts, isPickedUp, isSkipped } = holeOfLog(round.log, ref)
    if (isPickedUp) return ', picked up'
    if (isSkipped) return ', not played'
    return strokes.length === 0 && putts === null ? '' : putts === null ? ', begun' : ', written down'
  }
  return (
    <nav className="hole-bar" aria-label="Holes">
      <button type="button" aria-label="Hole before" disabled={at <= 0} onClick={() => go(refs[at - 1])}>
        ‹
      </button>
      <select aria-label="Hole" value={holeRef} onChange={(event) => go(event.currentTarget.value)}>
        {refs.map((ref) => (
          <option key={ref} value={ref}>
            Hole {ref}
            {written(ref)}
          </option>
        ))}
      </select>
      <button
        type="button"
        aria-label="Next hole"
        disabled={at >= refs.length - 1}
        onClick={() => go(refs[at + 1])}
      >
        ›
      </button>
    </nav>
  )
}
