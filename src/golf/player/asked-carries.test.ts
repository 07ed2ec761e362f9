import { describe, expect, it } from 'vitest'
import { askedCarries } from './asked-carries.ts'
import { completePlayer } from './complete-player.ts'
import { playerFromAnswers } from './player-from-answers.ts'

function asked(carries: string): readonly string[] {
  const { file } = playerFromAnswers({ name: 'A', hand: 'right', handicapIndex: '18', carries }, 'yards')
  if (file === null) throw new Error(carries)
  return askedCarries(completePlayer(file), 'yards')
}

describe('askedCarries', () => {
  it('asks about a driver that hardly passes a 7-iron, and about a total or a unit beside a carry', () => {
    expect(asked('driver 105, 7i 100')).toEqual([
      expect.stringMatching(
        /^The driver is said to carry 5 yd more than the 7-iron, where about [4-6]\d is usual/,
      ),
    ])
    expect(asked('driver 250, 7i 110')).toHaveLength(1)
    expect(asked('7i 140, 8i 90')).toHaveLength(1)
  })

  it('is silent about carries of players long and short', () => {
    // Common practice: what teaching professionals write down for men, women and seniors.
    for (const usual of [
      'driver 205, 7i 140',
      'driver 138, 7i 92',
      'driver 180, 7i 130',
      '7i 140, 8i 130',
      'driver 270, 5i 200, 9i 150',
      '7i 120',
      '',
    ])
      expect(asked(usual), usual).toEqual([])
  })
})
