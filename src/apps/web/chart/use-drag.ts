import { type PointerEvent, useRef } from 'react'
import type { Point } from '#numbers/geometry/point.ts'

/** What a dragged thing listens to. */
export interface DragListeners {
  readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void
  readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void
  readonly onPointerUp: (event: PointerEvent<HTMLElement>) => void
  readonly onPointerCancel: (event: PointerEvent<HTMLElement>) => void
}

/** One press from its beginning on. */
export interface Drag {
  /** The same for all of one drag, and of no other. */
  readonly number: number
  /** Where it began, CSS pixels on the screen. */
  readonly began: Point
  /** Where it is now. */
  readonly now: Point
}

let drags = 0

/** A number that no drag has had. */
export function nextDrag(): number {
  drags += 1
  return drags
}

/** Follows presses on one thing: `onMove` for every move while it is held, `onHold` when it is taken and let go. */
export function useDrag(
  onMove: (drag: Drag) => void,
  onHold: (isHeld: boolean) => void = () => {},
): DragListeners {
  const held = useRef<Drag | null>(null)
  const end = (): void => {
    if (held.current === null) return
    held.current = null
    onHold(false)
  }
  return {
    onPointerDown: (event) => {
      event.stopPropagation()
      event.currentTarget.setPointerCapture(event.pointerId)
      const at: Point = [event.clientX, event.clientY]
      held.current = { number: nextDrag(), began: at, now: at }
      onHold(true)
    },
    onPointerMove: (event) => {
      if (held.current === null) return
      held.current = { ...held.current, now: [event.clientX, event.clientY] }
      onMove(held.current)
    },
    onPointerUp: end,
    onPointerCancel: end,
  }
}
