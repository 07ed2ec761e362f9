import { describe, expect, it } from 'vitest'
import { bagOfShots } from './bag-of-shots.ts'
import { completePlayer } from './complete-player.ts'
import type { PlayerFile } from './player-file.ts'
import type { ShotRecord } from './shot-record.ts'

function player(names: readonly string[], bag?: PlayerFile['bag']): PlayerFile {
  return {
    name: 'A',
    hand: 'right',
    handicapIndex: 12,
    sex: 'female',
    ...(bag === undefined ? {} : { bag }),
    clubs: names.map((name) => ({ name, shots: 0, lies: {} })),
    shortGame: {},
    putting: {},
  }
}

function shots(club: string, count: number): ShotRecord[] {
  return Array.from({ length: count }, () => ({
    date: null,
    club,
    lie: null,
    carryMetres: 100,
    totalMetres: null,
    offlineMetres: null,
    strike: null,
  }))
}

describe('bagOfShots', () => {
  it('lists clubs that were hit in a bag that was a guess, the most used first, and no slip of the pen', () => {
    const { file, added } = bagOfShots(player(['driver']), [
      ...shots('5-hybrid', 8),
      ...shots('4-iron', 20),
      ...shots('2-iron', 2),
      ...shots('driver', 30),
    ])
    expect(added).toEqual(['4-iron', '5-hybrid'])
    const names = completePlayer(file).clubs.map(({ name }) => name)
    expect(names).toEqual(expect.arrayContaining(['driver', '4-iron', '5-hybrid', 'sand-wedge']))
    expect(names).not.toContain('2-iron')
    expect(names.length).toBeLessThanOrEqual(13)
  })

  it('leaves the rest of the bag a guess however many clubs were hit', () => {
    const hit = ['3-wood', '5-wood', '4-hybrid', '5-iron', '6-iron', '7-iron', '8-iron', '9-iron']
    const { file } = bagOfShots(
      player(['driver']),
      hit.flatMap((name) => shots(name, 6)),
    )
    const names = completePlayer(file).clubs.map(({ name }) => name)
    expect(names).toEqual(expect.arrayContaining([...hit, 'pitching-wedge']))
  })

  it('leaves a listed bag as it is, and knows its wedges by loft', () => {
    const listed = player(['driver', 'pitching-wedge', '52-wedge', '58-wedge'], 'as-listed')
    const bag = bagOfShots(listed, [
      ...shots('gap-wedge', 9),
      ...shots('lob-wedge', 1),
      ...shots('7-iron', 9),
    ])
    expect(bag.file).toBe(listed)
    expect(new Set(bag.shots.map(({ club }) => club))).toEqual(new Set(['52-wedge', '58-wedge', '7-iron']))
  })
})
