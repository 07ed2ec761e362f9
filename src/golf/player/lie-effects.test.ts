import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { lieEffect } from './lie-effects.ts'
import { LIES, type Player } from './player.ts'

const player = (handicapIndex: number, lies: Partial<Record<(typeof LIES)[number], boolean>> = {}): Player =>
  completePlayer({
    name: 'x',
    hand: 'right',
    sex: 'unstated',
    handicapIndex,
    bag: 'as-listed',
    clubs: [
      'driver',
      '3-wood',
      '5-wood',
      '3-hybrid',
      '4-iron',
      '6-iron',
      '7-iron',
      '9-iron',
      'pitching-wedge',
      '52-wedge',
      'sand-wedge',
    ].map((name) => ({ name, shots: 0, lies: name === '5-wood' ? lies : {} })),
    shortGame: {},
    putting: {},
  })

describe('lieEffect', () => {
  it('orders fairway, first cut, rough and heavy in every number, for every club and level', () => {
    for (const handicap of [-5, 10, 30]) {
      const one = player(handicap)
      for (const { name } of one.clubs) {
        const [fairway, firstCut, rough, heavy] = (['fairway', 'first-cut', 'rough', 'heavy'] as const).map(
          (lie) => lieEffect(lie, name, one),
        )
        for (const [better, worse] of [
          [fairway!, firstCut!],
          [firstCut!, rough!],
          [rough!, heavy!],
        ] as const) {
          expect(better.carry).toBeGreaterThanOrEqual(worse.carry)
          expect(better.direction).toBeLessThanOrEqual(worse.direction)
          expect(better.distance).toBeLessThanOrEqual(worse.distance)
          expect(better.mishit).toBeLessThanOrEqual(worse.mishit)
          expect(Number(better.allowed)).toBeGreaterThanOrEqual(Number(worse.allowed))
        }
      }
    }
  })

  it('leaves the reference lies as they are and costs a precise player more precision', () => {
    const tour = player(-5)
    expect(lieEffect('fairway', '7-iron', tour)).toEqual({
      carry: 1,
      direction: 1,
      distance: 1,
      mishit: 1,
      allowed: true,
    })
    expect(lieEffect('fringe', '7-iron', tour)).toEqual(lieEffect('fairway', '7-iron', tour))
    expect(lieEffect('tee', 'driver', tour).mishit).toBe(1)
    expect(lieEffect('tee', '3-wood', tour).mishit).toBeLessThan(1)
    expect(lieEffect('rough', '7-iron', tour).direction).toBeGreaterThan(
      lieEffect('rough', '7-iron', player(30)).direction,
    )
  })

  it('keeps long clubs out of bad lies (common practice)', () => {
    const one = player(15)
    const allowed = (lie: (typeof LIES)[number]): string[] =>
      one.clubs.map((club) => club.name).filter((name) => lieEffect(lie, name, one).allowed)
    expect(allowed('tee')).toHaveLength(11)
    expect(allowed('fairway')).not.toContain('driver')
    expect(allowed('heavy')).toEqual(['7-iron', '9-iron', 'pitching-wedge', '52-wedge', 'sand-wedge'])
    expect(allowed('bunker')).not.toContain('3-wood')
    expect(allowed('green')).toEqual([])
    expect(allowed('trees').length).toBeGreaterThan(0)
    expect(lieEffect('trees', '7-iron', one).carry).toBeLessThan(0.6)
  })

  it('lets the player overrule what is allowed, and knows the partial swings of a club', () => {
    expect(lieEffect('rough', '5-wood', player(15)).allowed).toBe(true)
    expect(lieEffect('rough', '5-wood', player(15, { rough: false })).allowed).toBe(false)
    expect(lieEffect('heavy', '5-wood', player(15, { heavy: true })).allowed).toBe(true)
    expect(lieEffect('rough', 'sand-wedge half', player(15))).toEqual(
      lieEffect('rough', 'sand-wedge', player(15)),
    )
    expect(lieEffect('fairway', 'lob-wedge', player(15)).allowed).toBe(false)
  })

  it('leaves every lie but the green at least one club, even to a bag of one', () => {
    const driverOnly = { clubs: player(15).clubs.filter((club) => club.name === 'driver') }
    for (const lie of LIES) expect(lieEffect(lie, 'driver', driverOnly).allowed).toBe(lie !== 'green')
  })

  it('never makes more than seven in ten shots mishit', () => {
    for (const lie of LIES) {
      for (const club of player(54).clubs) {
        expect(club.mishitShare * lieEffect(lie, club.name, player(54)).mishit).toBeLessThanOrEqual(
          0.7 + 1e-12,
        )
      }
    }
  })
})
