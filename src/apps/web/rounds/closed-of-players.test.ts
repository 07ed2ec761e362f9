import { describe, expect, it } from 'vitest'
import { closedOfPlayers } from './closed-of-players.ts'
import type { KeptRoundFile } from './kept-round.ts'

const COURSE = { id: 'links', name: 'Links' }
const kept = (id: string, belongs: Partial<KeptRoundFile['belongs']>): KeptRoundFile => ({
  id,
  key: id,
  round: { date: `2026-06-0${id}`, tee: null, format: null, holes: [] },
  planNumbers: null,
  faults: [],
  belongs: {
    courseId: 'links',
    course: 'Links',
    playerId: null,
    player: null,
    isOpen: false,
    date: null,
    ...belongs,
  },
})

describe('closedOfPlayers', () => {
  it('gives a round that names its player to that player, and one of a shared name to nobody', () => {
    const players = [
      { id: 'mia-1', name: 'Mia' },
      { id: 'mia-2', name: 'Mia' },
      { id: 'ole', name: 'Ole' },
    ]
    const all = [
      kept('1', { player: 'Mia' }),
      kept('2', { player: 'Mia', playerId: 'mia-2' }),
      kept('3', { player: 'Ole' }),
      kept('4', { player: 'Ole', isOpen: true }),
      kept('5', { player: 'Ole', courseId: 'other' }),
    ]
    const { of, left } = closedOfPlayers(all, COURSE, players, [])
    expect(of.map(({ player, rounds }) => [player.id, rounds.map(({ id }) => id)])).toEqual([
      ['mia-2', ['2']],
      ['ole', ['3']],
    ])
    // Of nobody, and not closed; the one on the other course does not count.
    expect(left).toBe(2)
  })
})
