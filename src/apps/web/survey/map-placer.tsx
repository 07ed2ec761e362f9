import { type KeyboardEvent, type ReactElement, useRef, useState } from 'react'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { type LonLat, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { radiansToDegrees, wholeTurn } from '#numbers/units/units.ts'
import type { LineStart } from '#outside/formats/line-start.ts'
import { onKeys } from '../commands/on-keys.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { MapLayer, type ServedMap } from './map-layer.tsx'

/** Finds the tee and the way the hole sets out on a map, north up: the map is moved under a cross in its middle. */
export function MapPlacer(props: {
  readonly map: ServedMap
  /** A place near the tee. */
  readonly near: LonLat
  readonly size: { readonly width: number; readonly height: number }
  readonly onStart: (start: LineStart) => void
  readonly onMissing: () => void
  readonly onLeave: () => void
}): ReactElement {
  const { map, size } = props
  const [middle, setMiddle] = useState(props.near)
  const [pixelsPerMetre, setScale] = useState(FIRST_PIXELS_PER_METRE)
  const [tee, setTee] = useState<LonLat | null>(null)
  const held = useRef<Point | null>(null)
  const { toPlane, toLonLat } = tangentPlane(middle)
  const [halfWidth, halfHeight] = [size.width / 2, size.height / 2]
  const toSheet = (place: LonLat): Point => {
    const [east, north] = toPlane(place)
    return [halfWidth + east * pixelsPerMetre, halfHeight - north * pixelsPerMetre]
  }
  const placeAt = ([right, down]: Point): LonLat =>
    toLonLat([(right - halfWidth) / pixelsPerMetre, (halfHeight - down) / pixelsPerMetre])
  const move = (right: number, down: number): void =>
    setMiddle(placeAt([halfWidth + right, halfHeight + down]))
  const onKey = (event: KeyboardEvent): void => {
    const step = (right: number, down: number) => () => {
      const pixels = event.shiftKey ? 1 : STEP_PIXELS
      move(right * pixels, down * pixels)
    }
    onKeys(event, 'map', {
      left: step(-1, 0),
      right: step(1, 0),
      up: step(0, -1),
      down: step(0, 1),
      put: take,
      takeBack: () => setTee(null),
      leave: props.onLeave,
    })
  }
  const ahead = tee === null ? null : tangentPlane(tee).toPlane(middle)
  const isFarEnough = ahead === null || Math.hypot(...ahead) >= LEAST_LEG_METRES
  function take(): void {
    if (ahead === null || tee === null) {
      setTee(middle)
      return
    }
    if (!isFarEnough) return
    props.onStart({
      longitude: tee[0],
      latitude: tee[1],
      headingDegrees: wholeTurn(radiansToDegrees(Math.atan2(ahead[0], ahead[1]))),
    })
  }
  const words =
    tee === null
      ? 'Move the map until the cross stands on the tee.'
      : 'Now move it until the cross stands where the first leg leads, as far away as you can.'
  const teeOnSheet = tee === null ? null : toSheet(tee)
  return (
    <>
      <p className="placer-words" role="status">
        {words}
      </p>
      <div
        className="placer map-placer"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes its own keys.
        tabIndex={0}
        aria-label={`The map: ${words}`}
        onKeyDown={onKey}
        onPointerDown={(event) => {
          held.current = [event.clientX, event.clientY]
          event.currentTarget.setPointerCapture(event.pointerId)
        }}
        onPointerMove={(event) => {
          const last = held.current
          if (last === null) return
          const now: Point = [event.clientX, event.clientY]
          if (distance(last, now) === 0) return
          move(last[0] - now[0], last[1] - now[1])
          held.current = now
        }}
        onPointerUp={() => {
          held.current = null
        }}
        onPointerCancel={() => {
          held.current = null
        }}
      >
        <MapLayer
          map={map}
          toSheet={toSheet}
          toEarth={placeAt}
          frame={{ left: 0, top: 0, right: size.width, bottom: size.height }}
          pixelsPerMetre={pixelsPerMetre}
          onMissing={props.onMissing}
        />
        {teeOnSheet !== null && (
          <span className="placer-mark" style={{ left: teeOnSheet[0], top: teeOnSheet[1] }} />
        )}
        <span className="map-cross" style={{ left: halfWidth, top: halfHeight }} />
      </div>
      <div className="map-tools">
        <button type="button" onClick={() => setScale(pixelsPerMetre * DESK_SETTINGS.enlargeStep)}>
          Nearer
        </button>
        <button type="button" onClick={() => setScale(pixelsPerMetre / DESK_SETTINGS.enlargeStep)}>
          Further
        </button>
        <button type="button" disabled={!isFarEnough} onClick={take}>
          {tee === null ? 'The tee is here' : 'The first leg leads here'}
        </button>
        {tee !== null && (
          <button type="button" onClick={() => setTee(null)}>
            Back a step
          </button>
        )}
        <button type="button" onClick={props.onLeave}>
          Leave the map
        </button>
      </div>
    </>
  )
}

/** Some 700 m across a chart of usual size, within which a hole is found from a typed place. Our choice. */
const FIRST_PIXELS_PER_METRE = 1
/** One press of an arrow, CSS pixels; one with shift is a pixel. */
const STEP_PIXELS = 20
/** A shorter leg says too little of its heading. Our assumption: a pixel at 60 m is half a degree. */
const LEAST_LEG_METRES = 60
