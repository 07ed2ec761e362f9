import { describe, expect, it } from 'vitest'
import {
  courseOfPlace,
  coursePlace,
  playerPageOfPlace,
  playerPlace,
  ROUNDS,
  recapOfPlace,
  recapPlace,
} from './places.ts'

describe('playerPageOfPlace', () => {
  it.each(['card', 'season', 'practice'] as const)(
    'leads to the %s of a player on a course, or of nobody yet',
    (page) => {
      const course = { page, courseId: 'sandrel-ness' }
      expect(playerPageOfPlace(playerPlace(page, 'sandrel-ness', 'wren'))).toEqual({
        ...course,
        playerId: 'wren',
      })
      expect(playerPageOfPlace(playerPlace(page, 'sandrel-ness', null))).toEqual({
        ...course,
        playerId: null,
      })
    },
  )

  it('is no other address, and a course may be called a card', () => {
    for (const place of ['', '#/desk', '#/course/card', '#/course/sandrel-ness', '#/cards', '#/card/x'])
      expect(playerPageOfPlace(place)).toBeUndefined()
    expect(playerPageOfPlace(playerPlace('card', 'card', 'card'))).toEqual({
      page: 'card',
      courseId: 'card',
      playerId: 'card',
    })
    expect(courseOfPlace(coursePlace('card'))).toBe('card')
  })
})

describe('recapOfPlace', () => {
  it('leads to the recap of a round, and the list of rounds is none', () => {
    expect(recapOfPlace(recapPlace('round-2026 05'))).toBe('round-2026 05')
    for (const place of ['', ROUNDS, '#/round', '#/desk']) expect(recapOfPlace(place)).toBeUndefined()
  })
})
