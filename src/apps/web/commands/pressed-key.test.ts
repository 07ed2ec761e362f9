import { describe, expect, it } from 'vitest'
import { KEY_TABLE, type KeyPlace, type PlaceName } from './key-table.ts'
import { isTyped, type Press, pressedKey } from './pressed-key.ts'

const NOTHING: Press = { key: '', ctrlKey: false, metaKey: false, altKey: false, shiftKey: false }
const press = (key: string, held: Partial<Press> = {}): Press => ({ ...NOTHING, ...held, key })

/** What is pressed for a row of the table. */
function pressOf(chord: string): Press {
  const key = chord.endsWith('+') ? '+' : (chord.split('+').at(-1) ?? '')
  return press(key, { ctrlKey: chord.includes('ctrl+'), shiftKey: chord.includes('shift+') })
}

const PLACES = Object.entries(KEY_TABLE) as [PlaceName, KeyPlace][]

describe('KEY_TABLE', () => {
  it('gives each key of each place to the row it stands in', () => {
    for (const [place, { rows }] of PLACES)
      for (const [name, { keys }] of Object.entries(rows)) {
        expect(keys.length).toBeGreaterThan(0)
        for (const chord of keys)
          expect([place, chord, pressedKey(place, pressOf(chord))]).toEqual([place, chord, name])
      }
  })

  it('has no key for two things of the whole page, nor one name for both', () => {
    const chords = [KEY_TABLE.page, KEY_TABLE.desk].flatMap(({ rows }) =>
      Object.values(rows).flatMap(({ keys }) => keys as readonly string[]),
    )
    expect(new Set(chords).size).toBe(chords.length)
    const names = [KEY_TABLE.page, KEY_TABLE.desk].flatMap(({ rows }) => Object.keys(rows))
    expect(new Set(names).size).toBe(names.length)
  })
})

describe('pressedKey', () => {
  it('takes control and the command key alike, small and large letters alike', () => {
    expect(pressedKey('page', press('z', { metaKey: true }))).toBe('undo')
    expect(pressedKey('page', press('Z', { ctrlKey: true, shiftKey: true }))).toBe('redo')
    expect(pressedKey('page', press('Y', { ctrlKey: true }))).toBe('redo')
  })

  it('leaves what has another control or option key with it', () => {
    expect(pressedKey('page', press('z'))).toBeNull()
    expect(pressedKey('page', press('?', { ctrlKey: true }))).toBeNull()
    expect(pressedKey('desk', press('n', { altKey: true }))).toBeNull()
    expect(pressedKey('handle', press('ArrowLeft', { metaKey: true }))).toBeNull()
  })

  it('takes a sign whether shift made it or not, and an arrow with shift as the same arrow', () => {
    expect(pressedKey('page', press('?', { shiftKey: true }))).toBe('keys')
    expect(pressedKey('desk', press('+', { shiftKey: true }))).toBe('nearer')
    expect(pressedKey('shots', press('ArrowUp', { shiftKey: true }))).toBe('further')
  })

  it('tells a key with shift from the one without where the table does', () => {
    expect(pressedKey('rows', press('Enter'))).toBe('nextRow')
    expect(pressedKey('rows', press('Enter', { shiftKey: true }))).toBe('rowBefore')
    expect(pressedKey('carries', press('ArrowUp', { shiftKey: true }))).toBe('before')
  })
})

describe('isTyped', () => {
  it('is a letter or a sign, not a named key nor one with control', () => {
    expect([press('n'), press('?', { shiftKey: true })].map(isTyped)).toEqual([true, true])
    expect([press('Enter'), press('z', { ctrlKey: true })].map(isTyped)).toEqual([false, false])
  })
})
