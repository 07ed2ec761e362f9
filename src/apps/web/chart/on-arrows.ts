import type { KeyboardEvent } from 'react'

const MOVES: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
}

/** Steps by an arrow key, to the right and further on; other keys are left alone. */
export function onArrows(event: KeyboardEvent, step: (right: number, further: number) => void): void {
  const move = MOVES[event.key]
  if (move === undefined) return
  event.preventDefault()
  step(move[0], move[1])
}
