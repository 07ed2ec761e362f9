import { type ReactElement, useRef } from 'react'
import { type BoxAxes, fromBox, type HazardBox, hazardBox, inBox } from '#golf/course/hazard-box.ts'
import { type HazardMove, moveBox } from '#golf/course/move-hazards.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import { clearOf } from './handle-places.ts'
import { onArrows } from './on-arrows.ts'
import { useDrag } from './use-drag.ts'

/** What can be taken hold of: the whole hazard, or one side of it. */
export type Grip = 'whole' | keyof HazardMove

/** The hazard that is looked at. */
export interface HeldHazard {
  readonly id: string
  /** What it is called: `water left`. */
  readonly words: string
  readonly surveyed: Polygon
  readonly move: HazardMove
}

/** Handles of the hazard that is looked at: one for the whole of it and one for each side. */
export function HazardHandles(props: {
  readonly hazard: HeldHazard
  readonly line: readonly Point[]
  readonly sheet: Sheet
  /** Handles that lie on the chart already, CSS pixels. */
  readonly others: readonly Point[]
  /** Metres of one step by key. */
  readonly step: number
  /** `drag` is the same for all of one drag; `null` for keys. */
  readonly onMove: (id: string, move: HazardMove, drag: number | null) => void
  readonly onHold: (isHeld: boolean) => void
}): ReactElement {
  const { hazard, line, sheet, onMove } = props
  const box = moveBox(hazardBox(hazard.surveyed, line), hazard.move)
  return (
    <>
      {GRIPS.map((grip) => (
        <HazardHandle
          key={grip}
          {...props}
          label={grip === 'whole' ? hazard.words : `${hazard.words}, ${grip} edge`}
          grip={grip}
          box={box}
          at={placeOf(grip, box, sheet, props.others)}
          onMove={(move, drag) => onMove(hazard.id, move, drag)}
        />
      ))}
    </>
  )
}

/** The whole comes last, so that it lies on top where the others are crowded onto it. */
const GRIPS: readonly Grip[] = ['near', 'far', 'left', 'right', 'whole']

function HazardHandle(props: {
  readonly label: string
  readonly grip: Grip
  readonly box: HazardBox
  readonly at: Point
  readonly hazard: HeldHazard
  readonly sheet: Sheet
  readonly step: number
  readonly onMove: (move: HazardMove, drag: number | null) => void
  readonly onHold: (isHeld: boolean) => void
}): ReactElement {
  const { label, grip, box, at, hazard, sheet, step, onMove } = props
  const began = useRef(hazard.move)
  const drag = useDrag(
    ({ number, began: from, now }) => {
      const metres: Point = [
        (now[0] - from[0]) / sheet.unitsPerMetre,
        (from[1] - now[1]) / sheet.unitsPerMetre,
      ]
      onMove(moveBy(began.current, grip, box, metres), number)
    },
    (isHeld) => {
      if (isHeld) began.current = hazard.move
      props.onHold(isHeld)
    },
  )
  return (
    <button
      type="button"
      className={`handle handle-hazard grip-${grip}`}
      style={{ left: at[0], top: at[1] }}
      aria-label={`${label}: arrow keys move it`}
      onKeyDown={(event) =>
        onArrows(event, (right, further) =>
          onMove(moveBy(hazard.move, grip, box, [right * step, further * step]), null),
        )
      }
      {...drag}
    />
  )
}

/** The move with its grip carried so many metres to the right and up the hole frame. */
export function moveBy(from: HazardMove, grip: Grip, { onward }: BoxAxes, by: Point): HazardMove {
  const [right, on] = inBox({ origin: [0, 0], onward }, by)
  switch (grip) {
    case 'whole':
      return { near: from.near + on, far: from.far + on, left: from.left + right, right: from.right + right }
    case 'near':
    case 'far':
      return { ...from, [grip]: from[grip] + on }
    case 'left':
    case 'right':
      return { ...from, [grip]: from[grip] + right }
  }
}

/** Where a grip is drawn: in the middle, or beyond its side, far enough out that small hazards can be hit; CSS pixels. */
function placeOf(grip: Grip, box: HazardBox, sheet: Sheet, others: readonly Point[]): Point {
  const middle: Point = [(box.left + box.right) / 2, (box.near + box.far) / 2]
  const room = HANDLE_ROOM / sheet.unitsPerMetre
  const across = Math.max((box.right - box.left) / 2, room)
  const along = Math.max((box.far - box.near) / 2, room)
  const aside: Readonly<Record<Grip, Point>> = {
    whole: [0, 0],
    near: [0, -along],
    far: [0, along],
    left: [-across, 0],
    right: [across, 0],
  }
  const [right, on] = aside[grip]
  const from = sheet.toSheet(fromBox(box, middle))
  const at = within(sheet.toSheet(fromBox(box, [middle[0] + right, middle[1] + on])), sheet)
  const away = Math.hypot(at[0] - from[0], at[1] - from[1])
  const outwards: Point = away === 0 ? [0, 1] : [(at[0] - from[0]) / away, (at[1] - from[1]) / away]
  return clearOf(at, outwards, others)
}

/** Far sides of long hazards lie off the chart: their handles stay on it. */
function within([x, y]: Point, { frame }: Sheet): Point {
  return [
    Math.min(frame.right - EDGE_ROOM, Math.max(frame.left + EDGE_ROOM, x)),
    Math.min(frame.bottom - EDGE_ROOM, Math.max(frame.top + EDGE_ROOM, y)),
  ]
}

/** Between the middles of two handles, and from a handle to the frame, CSS pixels. */
const HANDLE_ROOM = 48
const EDGE_ROOM = 16
