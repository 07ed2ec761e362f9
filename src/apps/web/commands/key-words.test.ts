import { expect, it } from 'vitest'
import { keyWords } from './key-words.ts'

it('names keys as they stand on a keyboard', () => {
  expect(['ctrl+shift+z', 'ctrl+y', 'n', '+', '?', ' ', 'shift+Enter', 'ArrowUp'].map(keyWords)).toEqual([
    ['Control', 'Shift', 'Z'],
    ['Control', 'Y'],
    ['N'],
    ['+'],
    ['?'],
    ['Space'],
    ['Shift', 'Enter'],
    ['Up arrow'],
  ])
})
