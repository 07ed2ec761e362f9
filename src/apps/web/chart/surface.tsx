import { type PointerEvent, type ReactElement, useRef } from 'react'
import { HAZARDS } from '#golf/course/hazards.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { nextDrag } from './use-drag.ts'

/** A press on the ground that may become a drag of what lies there. */
interface Press {
  readonly began: Point
  readonly hazard: string | null
  readonly drag: number
  readonly isDrag: boolean
}

/**
 * The ground of the chart: a tap aims there, on the green it cuts the hole, on a hazard it takes the hazard up; a mouse
 * or a pen drags a hazard at once. A finger that drags scrolls the page and takes a hazard by its handles.
 */
export function Surface(props: {
  readonly hole: Hole
  /** A place of the screen on the ground. */
  readonly ground: (at: Point) => Point
  readonly onGreen: (at: Point, drag: number) => void
  readonly onGround: (at: Point, drag: number) => void
  readonly onHazard: (id: string) => void
  /** A hazard dragged so many metres in the hole frame from where the drag began. */
  readonly onDragHazard: (id: string, by: Point, drag: number) => void
  readonly onHold: (isHeld: boolean) => void
}): ReactElement {
  const { hole, ground } = props
  const press = useRef<Press | null>(null)
  const end = (): void => {
    if (press.current?.isDrag === true) props.onHold(false)
    press.current = null
  }
  return (
    <div
      className="chart-surface"
      onPointerDown={(event) => {
        const began = placeOf(event)
        press.current = { began, hazard: hazardAt(hole, ground(began)), drag: nextDrag(), isDrag: false }
        if (press.current.hazard !== null && event.pointerType !== 'touch')
          event.currentTarget.setPointerCapture(event.pointerId)
      }}
      onPointerMove={(event) => {
        const held = press.current
        if (held?.hazard == null || event.pointerType === 'touch') return
        const now = placeOf(event)
        const pixels = Math.hypot(now[0] - held.began[0], now[1] - held.began[1])
        if (!held.isDrag && pixels < DESK_SETTINGS.tapPixels) return
        if (!held.isDrag) {
          press.current = { ...held, isDrag: true }
          props.onHazard(held.hazard)
          props.onHold(true)
        }
        const [from, to] = [ground(held.began), ground(now)]
        props.onDragHazard(held.hazard, [to[0] - from[0], to[1] - from[1]], held.drag)
      }}
      onPointerUp={(event) => {
        const held = press.current
        const at = ground(placeOf(event))
        end()
        if (held === null || held.isDrag) return
        if (hole.green !== null && polygonContains(hole.green, at)) props.onGreen(at, held.drag)
        else if (held.hazard !== null) props.onHazard(held.hazard)
        else if (at[1] > LEAST_AIM_METRES) props.onGround(at, held.drag)
      }}
      onPointerCancel={end}
    />
  )
}

/** Nearer to the markers than this nobody aims, metres. */
const LEAST_AIM_METRES = 5

function placeOf(event: PointerEvent): Point {
  return [event.clientX, event.clientY]
}

/** The hazard on top at a place; on the green and other ground there is none. */
function hazardAt(hole: Hole, at: Point): string | null {
  const on = hole.areas.findLast((area) => area.ground !== 'tee' && polygonContains(area.polygon, at))
  return on !== undefined && HAZARDS.has(on.ground) ? on.id : null
}
