import { expect, it } from 'vitest'
import { courseOfPlace, coursePlace, DESK, deskPlace, playerOfPlace, wantedOfPlace } from './places.ts'

it('leads to a course, and to the desk with a hole and a player, and reads both again', () => {
  expect(courseOfPlace(coursePlace('a b/7'))).toBe('a b/7')
  expect(courseOfPlace(DESK)).toBeUndefined()
  const wanted = { courseId: 'ness', holeRef: '7 a&b', playerId: 'wren' }
  expect(wantedOfPlace(deskPlace(wanted))).toEqual(wanted)
  expect(wantedOfPlace(deskPlace({ playerId: 'wren' }))).toEqual({ playerId: 'wren' })
  expect(wantedOfPlace(DESK)).toBeNull()
  expect(playerOfPlace(deskPlace(wanted))).toBeUndefined()
})
