import { type ReactElement, useRef, useState } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonContains } from '#numbers/geometry/polygon.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import type { Sheet } from '#paper/draw/sheet.ts'
import { onKeys } from '../commands/on-keys.ts'
import { handlePlaces } from './handle-places.ts'
import { headingTo } from './heading-to.ts'
import { onArrows } from './on-arrows.ts'
import { useDrag } from './use-drag.ts'

/** The handles of the ball, the aim and the pin: they take drags and keys. */
export function Handles(props: {
  readonly hole: Hole
  readonly sheet: Sheet
  readonly aim: HoleDrawingOptions['aim']
  readonly aimWords: string
  /** A place of the screen on the ground. */
  readonly ground: (at: Point) => Point
  readonly onAim: (headingDegrees: number, drag: number) => void
  readonly onAimStep: (steps: number | null) => void
  readonly onPin: (pin: Point, drag: number) => void
  readonly onPinStep: (right: number, further: number) => void
  /** Where the ball lies, hole frame. */
  readonly ball: Point
  readonly onBall: (at: Point, drag: number) => void
  readonly onBallStep: (right: number, further: number) => void
}): ReactElement {
  const { hole, sheet, aim, ground } = props
  const [isPinHeld, setPinHeld] = useState(false)
  const places = handlePlaces(hole, aim, sheet)
  // While the pin is held its handle does not jump clear of the aim.
  const heldLift = useRef(places.pinLift)
  if (!isPinHeld) heldLift.current = places.pinLift
  const lift = heldLift.current
  const pinTop = places.pin[1] + places.pinLift - lift
  const aimDrag = useDrag(({ now, number }) => props.onAim(headingTo(aim?.from, ground(now)), number))
  const pinDrag = useDrag(({ now, number }) => {
    // The pin is held by its pennant, which stands above the hole it marks.
    const [x, y] = ground(now)
    const at: Point = [x, y - lift / sheet.unitsPerMetre]
    if (hole.green !== null && polygonContains(hole.green, at)) props.onPin(at, number)
  }, setPinHeld)

  const ballDrag = useDrag(({ now, number }) => props.onBall(ground(now), number))
  const [ballX, ballY] = sheet.toSheet(props.ball)

  return (
    <>
      <button
        type="button"
        className="handle handle-ball"
        style={{ left: ballX, top: ballY }}
        aria-label="Ball: arrow keys move it"
        onKeyDown={(event) => onArrows(event, props.onBallStep)}
        {...ballDrag}
      />
      {hole.green !== null && (
        <button
          type="button"
          className="handle handle-pin"
          style={{ left: places.pin[0], top: pinTop }}
          aria-label="Pin: arrow keys move it one pace"
          onKeyDown={(event) => onArrows(event, props.onPinStep)}
          {...pinDrag}
        />
      )}
      {places.aim !== null && aim !== undefined && (
        <div
          className="handle handle-aim"
          style={{ left: places.aim[0], top: places.aim[1] }}
          role="slider"
          tabIndex={0}
          aria-label="Aim"
          aria-orientation="horizontal"
          aria-valuemin={-60}
          aria-valuemax={60}
          aria-valuenow={Math.round(aim.headingDegrees * 10) / 10}
          aria-valuetext={props.aimWords}
          onKeyDown={(event) =>
            onKeys(event, 'aim', {
              left: () => props.onAimStep(-1),
              right: () => props.onAimStep(1),
              farLeft: () => props.onAimStep(-5),
              farRight: () => props.onAimStep(5),
              best: () => props.onAimStep(null),
            })
          }
          {...aimDrag}
        />
      )}
    </>
  )
}
