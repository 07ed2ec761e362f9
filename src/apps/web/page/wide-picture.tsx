import { type ReactElement, useMemo, useRef } from 'react'
import type { Drawing } from '#paper/draw/drawing.ts'
import { Picture } from '../chart/picture.tsx'
import { useSize } from '../chart/use-size.ts'

/** A picture as wide as its place, drawn for that width so that its type stays as large as it is; `draw` must be kept by the caller. */
export function WidePicture(props: { readonly draw: (width: number) => Drawing }): ReactElement {
  const { draw } = props
  const place = useRef<HTMLDivElement>(null)
  const width = Math.min(MOST_WIDTH, useSize(place)?.width ?? 0)
  const drawing = useMemo(
    () => (width === 0 ? null : draw(Math.max(LEAST_UNITS, width / SCALE))),
    [draw, width],
  )
  return (
    <div ref={place} className="wide-picture">
      {drawing !== null && <Picture drawing={drawing} />}
    </div>
  )
}

/** CSS pixels; wider, the eye loses the row. */
const MOST_WIDTH = 760
/** Narrower, the names leave no room for what they name. */
const LEAST_UNITS = 300
/** Type of the drawings is made for paper: on the screen it is that much larger. */
const SCALE = 1.25
