import { type KeyboardEvent, type PointerEvent, type ReactElement, useEffect, useRef, useState } from 'react'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { type LonLat, tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { radiansToDegrees, wholeTurn } from '#numbers/units/units.ts'
import type { LineStart } from '#outside/formats/line-start.ts'
import { onKeys } from '../commands/on-keys.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { MapLayer, type ServedMap } from './map-layer.tsx'
import {
  carriedView,
  type MapView,
  nearerView,
  PIXELS_PER_METRE,
  pixelsInView,
  placeInView,
} from './map-view.ts'

/** Finds the tee and the way the hole sets out on a map, north up: the map is moved under a cross in its middle. */
export function MapPlacer(props: {
  readonly map: ServedMap
  /** A place near the tee. */
  readonly near: LonLat
  readonly size: { readonly width: number; readonly height: number }
  readonly onStart: (start: LineStart) => void
  readonly onMissing: (isMissing: boolean) => void
  readonly onLeave: () => void
}): ReactElement {
  const { map, size } = props
  const [view, setView] = useState<MapView>({ middle: props.near, pixelsPerMetre: FIRST_PIXELS_PER_METRE })
  const [tee, setTee] = useState<LonLat | null>(null)
  const surface = useRef<HTMLDivElement>(null)
  useEffect(() => {
    const before = document.activeElement
    surface.current?.focus()
    return () => {
      // Who has gone on to something else meanwhile stays there.
      if (before instanceof HTMLElement && document.activeElement === document.body) before.focus()
    }
  }, [])
  const { middle, pixelsPerMetre } = view
  const [halfWidth, halfHeight] = [size.width / 2, size.height / 2]
  const toSheet = (place: LonLat): Point => {
    const [right, down] = pixelsInView(view, place)
    return [halfWidth + right, halfHeight + down]
  }
  const onKey = (event: KeyboardEvent): void => {
    const step = (right: number, down: number) => () => {
      const pixels = event.shiftKey ? 1 : STEP_PIXELS
      setView((now) => carriedView(now, [right * pixels, down * pixels]))
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
        ref={surface}
        className="placer map-placer"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes its own keys.
        tabIndex={0}
        aria-label={`The map: ${words}`}
        onKeyDown={onKey}
        {...useFingers(setView)}
      >
        <MapLayer
          map={map}
          toSheet={toSheet}
          toEarth={([right, down]) => placeInView(view, [right - halfWidth, down - halfHeight])}
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
        <button
          type="button"
          disabled={pixelsPerMetre >= PIXELS_PER_METRE.nearest}
          onClick={() => setView((now) => nearerView(now, DESK_SETTINGS.enlargeStep))}
        >
          Nearer
        </button>
        <button
          type="button"
          disabled={pixelsPerMetre <= PIXELS_PER_METRE.furthest}
          onClick={() => setView((now) => nearerView(now, 1 / DESK_SETTINGS.enlargeStep))}
        >
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

/** One finger carries the map; of two each brings it nearer or further about the other. */
function useFingers(change: (how: (view: MapView) => MapView) => void) {
  const fingers = useRef(new Map<number, Point>())
  const release = ({ pointerId }: PointerEvent): void => {
    fingers.current.delete(pointerId)
  }
  return {
    onPointerDown(event: PointerEvent) {
      fingers.current.set(event.pointerId, [event.clientX, event.clientY])
      event.currentTarget.setPointerCapture(event.pointerId)
    },
    onPointerMove({ pointerId, clientX, clientY, currentTarget }: PointerEvent) {
      const held = fingers.current
      const [last, now]: readonly [Point | undefined, Point] = [held.get(pointerId), [clientX, clientY]]
      if (last === undefined || distance(last, now) === 0) return
      held.set(pointerId, now)
      const other = [...held].find(([id]) => id !== pointerId)?.[1]
      if (other === undefined) {
        change((view) => carriedView(view, [last[0] - now[0], last[1] - now[1]]))
        return
      }
      const { left, top, width, height } = currentTarget.getBoundingClientRect()
      const about: Point = [other[0] - left - width / 2, other[1] - top - height / 2]
      const times = distance(other, now) / Math.max(1, distance(other, last))
      change((view) => nearerView(view, times, about))
    },
    onPointerUp: release,
    onPointerCancel: release,
  }
}

/** Some 700 m across a chart of usual size, within which a hole is found from a typed place. Our choice. */
const FIRST_PIXELS_PER_METRE = 1
/** One press of an arrow, CSS pixels; one with shift is a pixel. */
const STEP_PIXELS = 20
/** A shorter leg says too little of its heading. Our assumption: a pixel at 60 m is half a degree. */
const LEAST_LEG_METRES = 60
