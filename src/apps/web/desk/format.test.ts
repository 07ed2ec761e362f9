import { describe, expect, it } from 'vitest'
import type { Player } from '#golf/player/player.ts'
import { openDesk } from './desk.ts'
import { chooseHole, setFormat, teeUp } from './edits.ts'
import { askedOf, FEWEST_STROKES, type Format, lastHoleOf } from './format.ts'

const opponent = { name: 'Ebb' } as Player
const format = (change: Partial<Format>): Format => ({ ...FEWEST_STROKES, ...change })

describe('what the hole is played for', () => {
  it('asks nothing for the fewest strokes, nor against an opponent who is not here yet', () => {
    expect(askedOf(FEWEST_STROKES, null)).toBeNull()
    expect(askedOf(format({ kind: 'match', opponentId: 'ebb' }), null)).toBeNull()
  })

  it('asks for points and targets with what was chosen for them, and for nothing of the other kinds', () => {
    const chosen = { received: 1, atMost: 9, through: '5', up: -2, played: 1 }
    expect(askedOf(format({ ...chosen, kind: 'points' }), opponent)).toEqual({
      kind: 'points',
      received: 1,
      played: 1,
    })
    expect(askedOf(format({ ...chosen, kind: 'at-most' }), opponent)).toEqual({
      kind: 'at-most',
      strokes: 9,
      through: '5',
      played: 1,
    })
  })

  it('asks for a match: the hole alone, or with its state and the holes after it', () => {
    const asked = (change: Partial<Format>) => askedOf(format({ kind: 'match', ...change }), opponent)
    expect(asked({ opponentScore: 5 })).toMatchObject({ opponent: 5, received: undefined, match: undefined })
    expect(asked({ opponentScore: 5, up: -1, through: '9' })).toMatchObject({
      match: { through: undefined, up: -1 },
    })
    expect(asked({ opponentId: 'ebb', through: '9' })).toMatchObject({
      opponent,
      match: { through: '9', up: 0 },
    })
  })

  it('counts later holes only where they can be worked out', () => {
    expect(lastHoleOf(format({ kind: 'points', through: '9' }))).toBeNull()
    expect(lastHoleOf(format({ kind: 'match', through: '9' }))).toBeNull()
    expect(lastHoleOf(format({ kind: 'match', through: '9', opponentId: 'ebb' }))).toBe('9')
  })

  it('is one edit of the desk: kept in bounds, without a chosen club, and at its beginning on another hole', () => {
    const desk = { ...openDesk('ness', '7', 'wren'), club: '7-iron' }
    const set = setFormat(desk, { kind: 'at-most', atMost: 99, played: 2, up: 3 })
    expect(set).toMatchObject({ club: null, format: { kind: 'at-most', atMost: 14, played: 2, up: 3 } })
    expect(setFormat(desk, { atMost: 99, through: '9' }).format.atMost).toBe(99)
    expect(teeUp(set).format).toMatchObject({ kind: 'at-most', played: 0 })
    expect(chooseHole({ ...set, format: { ...set.format, through: '9' } }, '8').format).toMatchObject({
      kind: 'at-most',
      through: null,
      played: 0,
      up: 3,
    })
  })
})
