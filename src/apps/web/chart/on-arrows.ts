import type { KeyboardEvent } from 'react'
import { onKeys } from '../commands/on-keys.ts'

/** Steps by an arrow key, to the right and further on; other keys are left alone. */
export function onArrows(event: KeyboardEvent, step: (right: number, further: number) => void): void {
  onKeys(event, 'handle', {
    left: () => step(-1, 0),
    right: () => step(1, 0),
    further: () => step(0, 1),
    back: () => step(0, -1),
  })
}
