import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CLUB_KINDS } from './club-names.ts'
import { completePlayer } from './complete-player.ts'
import { encodePlayer } from './encode-player.ts'
import { mirrorPlayer } from './mirror-player.ts'
import { parsePlayer } from './parse-player.ts'
import { partialSwings } from './partial-wedges.ts'
import type { Player } from './player.ts'

const share = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true })

/** Player files with some numbers typed and some not. */
const files = fc
  .record(
    {
      handicapIndex: share(-5, 54),
      sex: fc.constantFrom('male', 'female', 'unstated'),
      age: fc.integer({ min: 3, max: 110 }),
      hand: fc.constantFrom('right', 'left'),
      clubs: fc.uniqueArray(
        fc.record(
          {
            name: fc.constantFrom(...CLUB_KINDS.map((kind) => kind.name), '52-wedge', '58-wedge'),
            carry_m: share(20, 400),
            direction_sd_deg: share(1, 12),
            left_share: share(0.5, 1.5),
            curve_share: share(-0.1, 0.1),
            mishit_share: share(0, 0.9),
            shots: fc.nat(200),
            lies: fc.constantFrom(
              { heavy: false },
              { rough: { carry: 0.9, direction: 1.2, distance: 1.1, mishit: 1.4 }, 'rough:down': false },
              { bare: { carry: 0.97 }, fairway: true },
            ),
          },
          { requiredKeys: ['name'] },
        ),
        { maxLength: 13, selector: (club) => club.name },
      ),
      putting: fc.record({ direction_sd_deg: share(0.5, 4) }, { requiredKeys: [] }),
      shortGame: fc.record(
        {
          strokes_lost: share(0, 1),
          poor_share: share(0, 0.5),
          roll_per_carry: fc.constant({ '8-iron': 2.5 }),
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: ['handicapIndex', 'hand'] },
  )
  .map((fields) => JSON.stringify({ schema: 'player/1', name: 'Ida', ...fields }))

const read = (text: string): Player => completePlayer(parsePlayer(text, 'test'))

describe('encodePlayer', () => {
  it('comes back as the same player, typed numbers typed and guesses guesses', () => {
    fc.assert(
      fc.property(files, (text) => {
        const player = read(text)
        const again = read(encodePlayer(player))
        expect(again).toEqual(player)
        expect(encodePlayer(again)).toBe(encodePlayer(player))
      }),
      { numRuns: 60 },
    )
  })

  it('keeps the index a guess when it was read off a carry', () => {
    const player = read(
      '{"schema":"player/1","name":"A","hand":"left","clubs":[{"name":"7-iron","carry_m":120}]}',
    )
    const text = encodePlayer(player)
    expect(JSON.parse(text)).toMatchObject({
      guesses: ['handicapIndex'],
      putting: { guess: true },
      shortGame: { guess: true },
    })
    expect(read(text)).toEqual(player)
  })

  it('lets guesses follow a typed number that is changed', () => {
    const document = JSON.parse(
      encodePlayer(read('{"schema":"player/1","name":"A","hand":"left","handicapIndex":20}')),
    )
    const before = read(JSON.stringify(document))
    const after = read(JSON.stringify({ ...document, handicapIndex: 5 }))
    expect(after.clubs[0]!.carryMetres).toBeGreaterThan(before.clubs[0]!.carryMetres)
  })
})

describe('mirrorPlayer', () => {
  it('swaps hands and sides, and is its own inverse', () => {
    fc.assert(
      fc.property(files, (text) => {
        const player = read(text)
        const mirrored = mirrorPlayer(player)
        expect(mirrored.hand).not.toBe(player.hand)
        mirrored.clubs.forEach((club, index) => {
          const original = player.clubs[index]!
          expect([club.leftShare, club.rightShare]).toEqual([original.rightShare, original.leftShare])
          expect(club.curveShare + original.curveShare).toBe(0)
        })
        expect(mirrorPlayer(mirrored)).toEqual(player)
      }),
      { numRuns: 40 },
    )
  })
})

describe('partialSwings', () => {
  it('gives wedges only, between 40 m and the full swing, less sure of their length', () => {
    const player = read('{"schema":"player/1","name":"A","hand":"right","handicapIndex":15}')
    const swings = partialSwings(player)
    expect(swings.map((swing) => swing.stock.name)).toContain('sand-wedge three-quarter')
    for (const swing of swings) {
      const full = player.clubs.find((club) => club.name === swing.club)!
      expect(swing.club).toMatch(/wedge$/)
      expect(swing.stock.carryMetres).toBeGreaterThanOrEqual(40)
      expect(swing.stock.carryMetres).toBeLessThan(full.carryMetres)
      expect(swing.stock.carrySdShare).toBeGreaterThan(full.carrySdShare)
      expect(swing.stock.directionSdDegrees).toBeLessThan(full.directionSdDegrees)
    }
    const carries = swings.map((swing) => swing.stock.carryMetres)
    expect([...carries].sort((a, b) => b - a)).toEqual(carries)
  })
})
