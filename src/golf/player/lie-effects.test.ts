import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { type LieEffect, lieEffect } from './lie-effects.ts'
import { mirrorPlayer } from './mirror-player.ts'
import { type ClubLies, LIES, type Player } from './player.ts'

const player = (handicapIndex: number, lies: ClubLies = {}): Player =>
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
      spin: 1,
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
    // Common practice: a full swing among trees is hindered, a short low one has room, off a tee and out of sand it is not played.
    expect(lieEffect('trees', '7-iron', one).carry).toBeLessThan(
      lieEffect('trees', '7-iron punch', one).carry,
    )
    expect(lieEffect('rough', '7-iron punch', one)).toEqual(lieEffect('rough', '7-iron', one))
    for (const lie of ['tee', 'bunker'] as const)
      expect(lieEffect(lie, '7-iron punch', one).allowed).toBe(false)
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

  it('orders a ball that sits well, one not yet seen and one that sits down, and rough by its length', () => {
    for (const handicap of [-5, 10, 30])
      for (const { name } of player(handicap).clubs) {
        const one = player(handicap)
        const at = (sit?: 'good' | 'down', rough?: 'short' | 'normal' | 'long'): LieEffect =>
          lieEffect('rough', name, one, { sit, ...(rough && { rough }) })
        for (const [better, worse] of [
          [lieEffect('fairway', name, one), at('good')],
          [at('good'), at(undefined, 'short')],
          [at(undefined, 'short'), at()],
          [at(), at(undefined, 'long')],
          [at(undefined, 'long'), at('down')],
          [at('down'), lieEffect('heavy', name, one)],
        ] as const) {
          // Short irons may fly from rough that sits well.
          expect(better.carry + 0.011).toBeGreaterThanOrEqual(worse.carry)
          expect(better.direction).toBeLessThanOrEqual(worse.direction + 1e-12)
          expect(better.mishit).toBeLessThanOrEqual(worse.mishit + 1e-12)
          expect(Number(better.allowed)).toBeGreaterThanOrEqual(Number(worse.allowed))
        }
        expect(at('good').distance).toBeLessThan(at('down').distance)
        expect(at('good').spin).toBeGreaterThan(at('down').spin)
      }
  })

  // The law of total variance, spelled out for one club: half sit well, half sit down.
  it('takes a ball in rough that is not seen as the mixture of both', () => {
    const tour = player(-5)
    const sd = tour.clubs.find(({ name }) => name === '7-iron')?.carrySdShare ?? 0
    const [mix, good, down] = [undefined, 'good', 'down'].map((sit) =>
      lieEffect('rough', '7-iron', tour, { sit: sit as 'good' | 'down' | undefined }),
    ) as [LieEffect, LieEffect, LieEffect]
    const within = ((good.distance * sd) ** 2 + (down.distance * sd) ** 2) / 2
    const between = ((good.carry - down.carry) / 2) ** 2
    // The numbers of normal rough were held against the published figure as a whole: the halves must make them.
    expect(Math.abs(mix.distance / (Math.hypot(Math.sqrt(within), between ** 0.5) / sd) - 1)).toBeLessThan(
      0.005,
    )
    expect(mix.carry).toBeCloseTo((good.carry + down.carry) / 2, 12)
    expect(mix.mishit).toBeCloseTo((good.mishit + down.mishit) / 2, 12)
    expect(
      Math.abs(mix.direction / Math.hypot(good.direction / Math.SQRT2, down.direction / Math.SQRT2) - 1),
    ).toBeLessThan(0.005)
  })

  it('knows a flier, plugged sand and bare ground', () => {
    const one = player(15)
    const [flier, clean7] = (['flier', undefined] as const).map((sit) =>
      lieEffect('first-cut', '7-iron', one, { sit }),
    )
    expect(flier?.carry).toBeGreaterThan(clean7?.carry ?? 9)
    expect(flier?.spin).toBeLessThan(clean7?.spin ?? 0)
    const plugged = lieEffect('bunker', 'sand-wedge', one, { sit: 'plugged' })
    const clean = lieEffect('bunker', 'sand-wedge', one)
    expect(plugged.carry).toBeLessThan(clean.carry)
    expect(plugged.mishit).toBeGreaterThan(clean.mishit)
    expect(lieEffect('bunker', '7-iron', one, { sit: 'plugged' }).allowed).toBe(false)
    const bare = lieEffect('fairway', '7-iron', one, { sit: 'bare' })
    expect(bare.mishit).toBeGreaterThan(1)
    expect(bare.spin).toBeGreaterThan(1)
    // A sit that a lie does not know changes nothing.
    expect(lieEffect('heavy', '7-iron', one, { sit: 'plugged' })).toEqual(lieEffect('heavy', '7-iron', one))
  })

  it('puts the player\u2019s own factors in place of ours, also for a ball seen in the lie', () => {
    const own = { carry: 0.8, mishit: 1.9 }
    const one = player(15, { rough: own })
    const ours = lieEffect('rough', '5-wood', player(15))
    expect(lieEffect('rough', '5-wood', one)).toEqual({ ...ours, ...own })
    const seen = (of: Player, sit: 'good' | 'down'): LieEffect => lieEffect('rough', '5-wood', of, { sit })
    expect(seen(one, 'good').carry / 0.8).toBeCloseTo(seen(player(15), 'good').carry / ours.carry, 12)
    expect(seen(one, 'good').carry).toBeGreaterThan(seen(one, 'down').carry)
    // Factors say that the club is used there; those of a ball as it sits come first.
    expect(seen(player(15), 'down').allowed).toBe(false)
    expect(seen(player(15, { 'rough:down': { carry: 0.7 } }), 'down')).toMatchObject({
      carry: 0.7,
      allowed: true,
    })
    // They have no side: a mirrored player keeps them.
    expect(lieEffect('rough', '5-wood', mirrorPlayer(one))).toEqual(lieEffect('rough', '5-wood', one))
  })
})
