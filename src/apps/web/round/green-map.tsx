import { type ReactElement, useState } from 'react'
import { Engraved } from './engraved.tsx'
import type { GreenPicture } from './hole-picture.ts'
import { CARD, GREEN_SCALE, LARGEST_PAGE, PIXELS, RULER_MILLIMETRES, useScreenScale } from './screen-scale.ts'

/** The green: in a round that counts at its legal scale on a measured screen or not at all; in practice as large as the page. */
export function GreenMap(props: {
  readonly green: GreenPicture | null
  readonly isHeld: boolean
  readonly holeRef: string
}): ReactElement | null {
  const { green, isHeld, holeRef } = props
  const { pixelsPerMillimetre, keep } = useScreenScale()
  if (green === null) return null
  const { acrossMetres, alongMetres } = green
  // A page narrower than the green shows it smaller, which no Rule forbids.
  const pageMillimetres = (Math.min(innerWidth, COLUMN.widest) - COLUMN.margins) / (pixelsPerMillimetre ?? 1)
  const scale = Math.max(
    GREEN_SCALE,
    (acrossMetres * 1000) / Math.min(LARGEST_PAGE.width, pageMillimetres),
    (alongMetres * 1000) / LARGEST_PAGE.height,
  )
  const width = isHeld ? `${((acrossMetres * 1000) / scale) * (pixelsPerMillimetre ?? 0)}px` : '100%'
  return (
    <details className="green-map">
      <summary>The green</summary>
      {isHeld && pixelsPerMillimetre === null ? (
        <MeasureScreen onKeep={keep} />
      ) : (
        <>
          <div
            role="img"
            aria-label={`Green ${holeRef}`}
            className="green-picture"
            style={{ width, aspectRatio: `${acrossMetres} / ${alongMetres}` }}
          >
            <Engraved svg={green.ground} />
          </div>
          {isHeld && (
            <>
              <p>1:{Math.ceil(scale)}, not to be enlarged (Clarification 4.3a/1).</p>
              <button type="button" className="wide" onClick={() => keep(null)}>
                Measure the screen again
              </button>
            </>
          )}
        </>
      )}
    </details>
  )
}

/** The page's one column, pixels: as in its style sheet. */
const COLUMN = { widest: 480, margins: 20 } as const

/** A card of known size laid on the screen says how large the page is. */
function MeasureScreen(props: { readonly onKeep: (pixelsPerMillimetre: number) => void }): ReactElement {
  const [pixels, setPixels] = useState<number>(PIXELS.usual)
  const [isRuler, setRuler] = useState(false)
  const millimetres = isRuler ? RULER_MILLIMETRES : CARD.shortMillimetres
  const width = pixels * millimetres
  const step = (by: number): void =>
    setPixels((before) => Math.min(PIXELS.most, Math.max(PIXELS.least, before + by / millimetres)))
  return (
    <div className="measure-screen">
      <p>
        A green is shown at its legal scale only, so this screen has to be measured.{' '}
        {isRuler
          ? `Lay a ruler along the line between the two marks, and bring them ${RULER_MILLIMETRES} mm apart.`
          : 'Lay a bank or membership card upright between the two lines, and bring them to its edges.'}
      </p>
      <div className="card-outline" style={{ width: `${width}px`, height: '120px' }} />
      <div className="keys two">
        <button type="button" aria-label="Narrower by ten" onClick={() => step(-10)}>
          −10
        </button>
        <button type="button" aria-label="Narrower" onClick={() => step(-1)}>
          −
        </button>
        <button type="button" aria-label="Wider" onClick={() => step(1)}>
          +
        </button>
        <button type="button" aria-label="Wider by ten" onClick={() => step(10)}>
          +10
        </button>
        <button type="button" onClick={() => props.onKeep(pixels)}>
          It fits
        </button>
        <button type="button" aria-pressed={isRuler} onClick={() => setRuler(!isRuler)}>
          With a ruler
        </button>
      </div>
    </div>
  )
}
