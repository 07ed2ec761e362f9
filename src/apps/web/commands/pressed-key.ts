import { KEY_TABLE, type KeyName, type KeyRow, type PlaceName } from './key-table.ts'

/** What of a press is looked at. */
export type Press = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>

/** What a press does in a place; `null` = nothing there. */
export function pressedKey<Place extends PlaceName>(place: Place, press: Press): KeyName<Place> | null {
  const rows: Readonly<Record<string, KeyRow>> = KEY_TABLE[place].rows
  const is = (keys: readonly string[], asksShift: boolean): boolean =>
    keys.some((chord) => chord.includes('shift+') === asksShift && isPressed(chord, press))
  const found = (asksShift: boolean): string | undefined =>
    Object.keys(rows).find((name) => is(rows[name]?.keys ?? [], asksShift))
  // What asks for the shift key comes before what takes it as it likes.
  return ((press.shiftKey ? found(true) : undefined) ?? found(false) ?? null) as KeyName<Place> | null
}

/** Whether a key is one that is typed, as in a field: alone, without control. */
export function isTyped(press: Press): boolean {
  return press.key.length === 1 && !press.ctrlKey && !press.metaKey
}

function isPressed(chord: string, press: Press): boolean {
  const parts = chord.split('+').filter((part) => part !== '')
  // The plus is a key too.
  const key = chord.endsWith('+') ? '+' : (parts.at(-1) ?? '')
  const asksControl = parts.includes('ctrl')
  if (press.altKey || (press.ctrlKey || press.metaKey) !== asksControl) return false
  // With control the letter is the same whether shift makes it large or not, and shift then tells rows apart.
  return asksControl
    ? press.key.toLowerCase() === key && press.shiftKey === parts.includes('shift')
    : (press.key.length === 1 ? press.key.toLowerCase() : press.key) === key
}
