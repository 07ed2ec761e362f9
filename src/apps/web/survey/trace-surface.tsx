import { type KeyboardEvent, type PointerEvent, type ReactElement, useId, useRef } from 'react'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { nextDrag } from '../chart/use-drag.ts'
import { onKeys } from '../commands/on-keys.ts'
import { DESK_SETTINGS } from '../settings.ts'

/** What is done on the chart of a survey; places are CSS pixels of the chart. */
export interface TraceActions {
  /** A tap on the ground. */
  readonly onTap: (at: Point) => void
  /** A corner of the chosen outline dragged to a place. */
  readonly onDragCorner: (index: number, at: Point, drag: number) => void
  /** An enlarged chart carried along. */
  readonly onCarry: (by: Point) => void
  readonly onRest: () => void
  /** The cross a step to the right and further; fine steps with the shift key. */
  readonly onStep: (right: number, further: number, isFine: boolean) => void
  readonly onPut: () => void
  readonly onClose: () => void
  readonly onBack: () => void
  readonly onDrop: () => void
}

interface Press {
  readonly began: Point
  readonly last: Point
  readonly corner: number
  readonly drag: number
  readonly hasMoved: boolean
}

/** Takes taps, drags and keys over the chart of a survey. */
export function TraceSurface(
  props: TraceActions & {
    readonly label: string
    /** Corners of the chosen outline on the chart. */
    readonly corners: readonly Point[]
    readonly isEnlarged: boolean
    /** False lets a finger scroll the page. */
    readonly takesDrags: boolean
  },
): ReactElement {
  const { corners, isEnlarged } = props
  const press = useRef<Press | null>(null)
  const help = useId()
  const onKey = (event: KeyboardEvent): void => {
    const step = (right: number, further: number) => () => props.onStep(right, further, event.shiftKey)
    onKeys(event, 'trace', {
      left: step(-1, 0),
      right: step(1, 0),
      further: step(0, 1),
      back: step(0, -1),
      put: props.onPut,
      close: props.onClose,
      takeBack: props.onBack,
      drop: props.onDrop,
    })
  }
  const placeOf = (event: PointerEvent<HTMLElement>): Point => {
    const box = event.currentTarget.getBoundingClientRect()
    return [event.clientX - box.left, event.clientY - box.top]
  }
  return (
    <>
      <div
        className={`chart-surface${props.takesDrags || isEnlarged ? ' enlarged' : ''}`}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes its own keys.
        tabIndex={0}
        aria-label={props.label}
        aria-describedby={help}
        onKeyDown={onKey}
        onPointerDown={(event) => {
          const began = placeOf(event)
          const reach = event.pointerType === 'mouse' ? MOUSE_REACH : FINGER_REACH
          const near = corners.map((corner) => distance(corner, began))
          const corner = near.findIndex((away) => away <= reach && away === Math.min(...near))
          press.current = { began, last: began, corner, drag: nextDrag(), hasMoved: false }
          if (corner >= 0 || isEnlarged) event.currentTarget.setPointerCapture(event.pointerId)
        }}
        onPointerMove={(event) => {
          const held = press.current
          if (held === null) return
          const now = placeOf(event)
          if (!held.hasMoved && distance(now, held.began) < DESK_SETTINGS.tapPixels) return
          press.current = { ...held, last: now, hasMoved: true }
          if (held.corner >= 0) props.onDragCorner(held.corner, now, held.drag)
          else if (isEnlarged) props.onCarry([now[0] - held.last[0], now[1] - held.last[1]])
        }}
        onPointerUp={(event) => {
          const held = press.current
          press.current = null
          if (held === null) return
          if (!held.hasMoved) props.onTap(placeOf(event))
          else if (held.corner < 0 && isEnlarged) props.onRest()
        }}
        onPointerCancel={() => {
          press.current = null
        }}
      />
      <p id={help} className="unseen">
        Arrow keys move the cross, with shift in fine steps. Space puts a corner down, enter closes the
        outline, backspace takes the last step back, escape lets the outline go.
      </p>
    </>
  )
}

/** So near to a corner it is taken hold of, CSS pixels. */
const MOUSE_REACH = 12
const FINGER_REACH = 24
