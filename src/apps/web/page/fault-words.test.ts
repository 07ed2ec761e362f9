import { expect, it } from 'vitest'
import { faultWords } from './fault-words.ts'

it('says where a fault is as a reader of the desk would, and keeps every other place', () => {
  const fault = { severity: 'warning', code: 'MAR-ROUND-012', message: 'M.', advice: 'A.' } as const
  expect(faultWords({ ...fault, place: 'hole 7, holes[6].strokes[1]' })).toBe('hole 7, stroke 2: M. A.')
  expect(faultWords({ ...fault, place: 'line 4, stroke 2, column 14' })).toBe(
    'line 4, stroke 2, column 14: M. A.',
  )
  expect(faultWords({ ...fault, place: '' })).toBe('M. A.')
})
