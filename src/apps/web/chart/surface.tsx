import { type PointerEvent, type ReactElement, useRef } from 'react'
import { HAZARDS } from '#golf/course/hazards.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import { DESK_SETTINGS } from '../settings.ts'
import { nextDrag } from './use-drag.ts'

/** What one finger or the mouse does while it is down. */
interface Press {
  readonly began: Point
  readonly last: Point
  readonly hazard: string | null
  readonly drag: number
  /** `null` = it has not moved yet, and may be a tap. */
  readonly carries: 'hazard' | 'chart' | null
}

/**
 * The ground of the chart: a tap aims there, on the green it cuts the hole, on a hazard it takes the hazard up; a mouse
 * or a pen drags a hazard at once. Of an enlarged chart a drag of other ground carries the chart, and any finger does. Two
 * fingers enlarge. A finger on the whole hole scrolls the page and takes a hazard by its handles.
 */
export function Surface(props: {
  readonly hole: Hole
  readonly isEnlarged: boolean
  /** A place of the screen on the ground. */
  readonly ground: (at: Point) => Point
  /** Takes every tap while a person measures or chooses a spot; `null` = nobody does. */
  readonly onTap: ((at: Point) => void) | null
  readonly onGreen: (at: Point, drag: number) => void
  readonly onGround: (at: Point, drag: number) => void
  readonly onHazard: (id: string) => void
  /** A hazard dragged so many metres in the hole frame from where the drag began. */
  readonly onDragHazard: (id: string, by: Point, drag: number) => void
  readonly onHold: (isHeld: boolean) => void
  /** The chart carried so far, CSS pixels. */
  readonly onCarry: (by: Point) => void
  /** Two fingers spread by a factor about a place of the screen. */
  readonly onSpread: (factor: number, at: Point) => void
  readonly onRest: () => void
}): ReactElement {
  const { hole, isEnlarged, ground } = props
  const press = useRef<Press | null>(null)
  const fingers = useRef(new Map<number, Point>())
  const end = (event: PointerEvent): Press | null => {
    fingers.current.delete(event.pointerId)
    const held = press.current
    if (held?.carries === 'hazard') props.onHold(false)
    if (held?.carries === 'chart') props.onRest()
    press.current = null
    return held
  }
  const spread = (event: PointerEvent): void => {
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1]
    const before = fingers.current.get(event.pointerId)
    const now = placeOf(event)
    fingers.current.set(event.pointerId, now)
    if (other === undefined || before === undefined) return
    const middle: Point = [(now[0] + other[0]) / 2, (now[1] + other[1]) / 2]
    props.onCarry([(now[0] - before[0]) / 2, (now[1] - before[1]) / 2])
    props.onSpread(apart(now, other) / Math.max(1, apart(before, other)), middle)
  }
  return (
    <div
      className={`chart-surface${isEnlarged ? ' enlarged' : ''}`}
      onPointerDown={(event) => {
        const began = placeOf(event)
        fingers.current.set(event.pointerId, began)
        if (fingers.current.size > 1) {
          press.current = null
          return
        }
        const hazard = hazardAt(hole, ground(began))
        press.current = { began, last: began, hazard, drag: nextDrag(), carries: null }
        if (isEnlarged || (hazard !== null && event.pointerType !== 'touch'))
          event.currentTarget.setPointerCapture(event.pointerId)
      }}
      onPointerMove={(event) => {
        if (fingers.current.size > 1) return spread(event)
        const held = press.current
        if (held === null) return
        const now = placeOf(event)
        if (held.carries === null && apart(now, held.began) < DESK_SETTINGS.tapPixels) return
        const carries = held.carries ?? carriedBy(held, event, isEnlarged)
        if (carries === null) return
        if (held.carries === null && carries === 'hazard' && held.hazard !== null) {
          props.onHazard(held.hazard)
          props.onHold(true)
        }
        press.current = { ...held, last: now, carries }
        if (carries === 'chart') props.onCarry([now[0] - held.last[0], now[1] - held.last[1]])
        else if (held.hazard !== null) {
          const [from, to] = [ground(held.began), ground(now)]
          props.onDragHazard(held.hazard, [to[0] - from[0], to[1] - from[1]], held.drag)
        }
      }}
      onPointerUp={(event) => {
        const at = ground(placeOf(event))
        const held = end(event)
        if (held === null || held.carries !== null) return
        if (props.onTap !== null) props.onTap(at)
        else if (hole.green !== null && polygonContains(hole.green, at)) props.onGreen(at, held.drag)
        else if (held.hazard !== null) props.onHazard(held.hazard)
        else if (at[1] > LEAST_AIM_METRES) props.onGround(at, held.drag)
      }}
      onPointerCancel={end}
      onPointerLeave={(event) => fingers.current.delete(event.pointerId)}
    />
  )
}

/** Nearer to the markers than this nobody aims, metres. */
const LEAST_AIM_METRES = 5

/** What a drag carries along: a mouse a hazard, otherwise an enlarged chart goes. */
function carriedBy(press: Press, { pointerType }: PointerEvent, isEnlarged: boolean): Press['carries'] {
  if (press.hazard !== null && pointerType !== 'touch') return 'hazard'
  return isEnlarged ? 'chart' : null
}

function placeOf(event: PointerEvent): Point {
  return [event.clientX, event.clientY]
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1])
}

/** The hazard on top at a place; on the green and other ground there is none. */
function hazardAt(hole: Hole, at: Point): string | null {
  const on = hole.areas.findLast((area) => area.ground !== 'tee' && polygonContains(area.polygon, at))
  return on !== undefined && HAZARDS.has(on.ground) ? on.id : null
}
