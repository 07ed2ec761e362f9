import { describe, expect, it } from 'vitest'
import {
  cardOfPlace,
  cardPlace,
  courseOfPlace,
  coursePlace,
  ROUNDS,
  recapOfPlace,
  recapPlace,
} from './places.ts'

describe('cardOfPlace', () => {
  it('leads to the card of a player on a course, or of nobody yet', () => {
    expect(cardOfPlace(cardPlace('sandrel-ness', 'wren'))).toEqual({
      courseId: 'sandrel-ness',
      playerId: 'wren',
    })
    expect(cardOfPlace(cardPlace('sandrel-ness', null))).toEqual({ courseId: 'sandrel-ness', playerId: null })
  })

  it('is no other address, and a course may be called a card', () => {
    for (const place of ['', '#/desk', '#/course/card', '#/course/sandrel-ness', '#/cards', '#/card/x'])
      expect(cardOfPlace(place)).toBeUndefined()
    expect(cardOfPlace(cardPlace('card', 'card'))).toEqual({ courseId: 'card', playerId: 'card' })
    expect(courseOfPlace(coursePlace('card'))).toBe('card')
  })
})

describe('recapOfPlace', () => {
  it('leads to the recap of a round, and the list of rounds is none', () => {
    expect(recapOfPlace(recapPlace('round-2026 05'))).toBe('round-2026 05')
    for (const place of ['', ROUNDS, '#/round', '#/desk']) expect(recapOfPlace(place)).toBeUndefined()
  })
})
