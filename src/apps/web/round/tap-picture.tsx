import { type MouseEvent, type ReactElement, useState } from 'react'
import type { KeptStroke } from '#golf/round/round-of-log.ts'
import { LEFT, type Units } from './club-words.ts'
import { Engraved } from './engraved.tsx'
import { type HolePicture, toHole, toPicture } from './hole-picture.ts'

type Place = readonly [number, number]

/** The hole to tap where a ball came to rest; with the ruler two taps say how far it is from one place to the other. */
export function TapPicture(props: {
  readonly picture: HolePicture
  readonly strokes: readonly KeptStroke[]
  readonly units: Units
  /** False where no distances are measured: Local Rule G-5. */
  readonly mayMeasure: boolean
  readonly onTap: (at: Place) => void
}): ReactElement {
  const { picture, strokes, units, mayMeasure, onTap } = props
  const [ruler, setRuler] = useState<readonly Place[] | null>(null)
  const { width, height } = picture
  const tap = (event: MouseEvent<HTMLButtonElement>): void => {
    const box = event.currentTarget.getBoundingClientRect()
    // A key press has no place.
    if (event.detail === 0) return
    const at = toHole(picture, [
      ((event.clientX - box.left) / box.width) * width,
      ((event.clientY - box.top) / box.height) * height,
    ])
    if (ruler === null) onTap(at)
    else setRuler(ruler.length === 1 ? [...ruler, at] : [at])
  }
  const marks = strokes.flatMap(({ id, stroke: { finish } }, index) =>
    finish !== null && 'x' in finish
      ? [{ id, number: index + 1, at: toPicture(picture, [finish.x, finish.y]) }]
      : [],
  )
  return (
    <section aria-label="Picture of the hole" className="picture">
      <button type="button" className="tap" style={{ aspectRatio: `${width} / ${height}` }} onClick={tap}>
        <span className="unseen">
          {ruler === null ? 'Hole: tap where the ball came to rest' : 'Hole: tap from and to'}
        </span>
        <Engraved svg={picture.ground} />
        <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
          {marks.map(({ id, number, at: [x, y] }) => (
            <g key={id}>
              <circle cx={x} cy={y} r={9} />
              <text x={x} y={y + 4.5}>
                {number}
              </text>
            </g>
          ))}
          {ruler !== null && <RulerLine from={ruler[0]} to={ruler[1]} picture={picture} />}
        </svg>
      </button>
      {mayMeasure && (
        <div className="keys two">
          <button
            type="button"
            aria-pressed={ruler !== null}
            onClick={() => setRuler(ruler === null ? [] : null)}
          >
            Ruler
          </button>
          <p role="status">{ruler !== null && rulerWords(ruler, units)}</p>
        </div>
      )}
    </section>
  )
}

function RulerLine(props: {
  readonly from: Place | undefined
  readonly to: Place | undefined
  readonly picture: HolePicture
}): ReactElement | null {
  const { from, to, picture } = props
  if (from === undefined) return null
  const [x, y] = toPicture(picture, from)
  const [toX, toY] = toPicture(picture, to ?? from)
  return (
    <g className="ruler">
      <path d={`M${x} ${y}L${toX} ${toY}`} />
      <circle cx={x} cy={y} r={4} />
      <circle cx={toX} cy={toY} r={4} />
    </g>
  )
}

/** Along the ground of the map: no height, no wind, no club (Rule 4.3a(1)). */
function rulerWords([from, to]: readonly Place[], units: Units): string {
  if (from === undefined) return 'Tap where to measure from.'
  if (to === undefined) return 'Tap where to.'
  const { sign, metres } = LEFT[units]
  return `${Math.round(Math.hypot(to[0] - from[0], to[1] - from[1]) / metres)} ${sign} on the map`
}
