import type { KeyboardEvent } from 'react'
import type { KeyName, PlaceName } from './key-table.ts'
import { pressedKey } from './pressed-key.ts'

/** Does what a key does in a place; other keys are left alone. Every row of the place has its action. */
export function onKeys<Place extends PlaceName>(
  event: KeyboardEvent,
  place: Place,
  actions: Readonly<Record<KeyName<Place>, () => void>>,
): void {
  const name = pressedKey(place, event)
  if (name === null) return
  event.preventDefault()
  actions[name]()
}
