import { describe, expect, it } from 'vitest'
import { completePlayer } from './complete-player.ts'
import { playerOfLevel } from './level.ts'
import type { Club, Player } from './player.ts'
import { priorPutting } from './prior-near-green.ts'
import { puttingValues } from './putting-values.ts'
import type { Said } from './said.ts'
import { saidPuttingHandicap, saidStrokesLost } from './said-prior.ts'
import { HANDICAP_BY_HALF_HOLED, SAID_COUNTS } from './said-settings.ts'
import { shortGameShares } from './short-game-shares.ts'

const playerWho = (said: Said, hand: Player['hand'] = 'right'): Player =>
  completePlayer({
    name: 'x',
    hand,
    sex: 'male',
    handicapIndex: 15,
    said,
    clubs: [],
    shortGame: {},
    putting: {},
  })
const clubOf = (player: Player, name: string): Club => player.clubs.find((club) => club.name === name)!

describe('what was said', () => {
  it('changes nothing when nothing was said', () => {
    expect(playerWho({}).clubs).toEqual(playerWho({ shape: 'straight', big_miss: 'none' }).clubs)
  })

  it('bends a draw to the left for a right-hander and to the right for a left-hander, long clubs most', () => {
    const driver = clubOf(playerWho({ shape: 'draw' }), 'driver').curveShare
    expect(driver).toBeLessThan(0)
    expect(clubOf(playerWho({ shape: 'draw' }, 'left'), 'driver').curveShare).toBe(-driver)
    expect(clubOf(playerWho({ shape: 'fade' }), 'driver').curveShare).toBe(-driver)
    expect(clubOf(playerWho({ shape: 'slice' }), 'driver').curveShare).toBeGreaterThan(-driver)
    const wedge = clubOf(playerWho({ shape: 'draw' }), 'sand-wedge').curveShare
    expect(wedge).toBeLessThan(0)
    expect(wedge).toBeGreaterThan(driver / 2)
  })

  it('puts the big miss on its side, and a short one into the mishits', () => {
    const left = clubOf(playerWho({ big_miss: 'left' }), 'driver')
    expect(left.leftShare).toBeGreaterThan(1)
    expect(left.leftShare + left.rightShare).toBeCloseTo(2, 12)
    const usual = clubOf(playerWho({}), 'driver')
    expect(clubOf(playerWho({ big_miss: 'short' }), 'driver').mishitCarryShare).toBeLessThan(
      usual.mishitCarryShare,
    )
  })

  it('moves the mishits towards what was said and not all the way', () => {
    const usual = clubOf(playerWho({}), '7-iron').mishitShare
    const rare = clubOf(playerWho({ mishit_share: 0.03 }), '7-iron').mishitShare
    const often = clubOf(playerWho({ mishit_share: 0.333 }), '7-iron').mishitShare
    expect(rare).toBeGreaterThan(0.03)
    expect(rare).toBeLessThan(usual)
    expect(often).toBeGreaterThan(usual)
    expect(often).toBeLessThan(0.333)
    // Said of the whole bag: the long clubs have more of them, as the level's have.
    expect(clubOf(playerWho({ mishit_share: 0.2 }), '5-wood').mishitShare).toBeGreaterThan(
      clubOf(playerWho({ mishit_share: 0.2 }), '7-iron').mishitShare,
    )
  })

  it('stays a guess in every number', () => {
    const said: Said = {
      usual_score: 90,
      shape: 'hook',
      big_miss: 'left',
      mishit_share: 0.1,
      up_and_down_share: 0.5,
      half_holed_m: 2,
    }
    const player = completePlayer({
      ...{ name: 'x', hand: 'right', sex: 'male', said, clubs: [], shortGame: {}, putting: {} },
    })
    expect(player.handicapIndex).toBe(15)
    expect(player.guesses).toEqual(new Set([...playerWho({}).guesses, 'handicapIndex']))
  })

  it('leaves the short game of a level where it is when the level’s own share is said', () => {
    for (const level of ['scratch', '10', '20', '30'] as const) {
      const player = playerOfLevel(level, { sex: 'male' })
      const shares = shortGameShares(player, 'fairway', 20)
      const { strokesLost } = player.shortGame
      const said = { up_and_down_share: (shares[0] ?? 0) + (shares[1] ?? 0) }
      expect(saidStrokesLost(strokesLost, said)).toBeCloseTo(strokesLost, 2)
    }
    const up = playerWho({ up_and_down_share: 0.5 }).shortGame.strokesLost
    expect(up).toBeLessThan(playerWho({}).shortGame.strokesLost)
  })

  it('reads a half-holed distance as the putting table does', () => {
    for (const [metres, handicap] of HANDICAP_BY_HALF_HOLED) {
      const { shares } = puttingValues({ putting: priorPutting(handicap) })
      expect(shares(metres)[0]).toBeCloseTo(0.5, 2)
      expect(saidPuttingHandicap(handicap, { half_holed_m: metres })).toBeCloseTo(handicap, 9)
    }
    expect(saidPuttingHandicap(20, { half_holed_m: 2.133 })).toBeCloseTo(20 * (1 - SAID_COUNTS), 9)
  })
})
