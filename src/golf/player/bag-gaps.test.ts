import { describe, expect, it } from 'vitest'
import { bagGaps } from './bag-gaps.ts'
import { completePlayer } from './complete-player.ts'
import type { Club } from './player.ts'

function bag(handicapIndex: number): readonly Club[] {
  return completePlayer({
    name: 'A',
    hand: 'right',
    handicapIndex,
    sex: 'male',
    clubs: [],
    shortGame: {},
    putting: {},
  }).clubs
}

/** The bag with other carries for some clubs. */
function changed(clubs: readonly Club[], carries: Readonly<Record<string, number>>): Club[] {
  return clubs.map((club) => ({ ...club, carryMetres: carries[club.name] ?? club.carryMetres }))
}

describe('bagGaps', () => {
  it.each([0, 10, 20, 36])('finds nothing amiss in the usual bag of a player off %i', (handicapIndex) => {
    const gaps = bagGaps(bag(handicapIndex))
    expect(gaps.map(({ verdict }) => verdict)).toEqual(Array(13).fill('even'))
    expect(gaps.at(-1)).toMatchObject({ next: null, gapMetres: 0 })
  })

  it('finds two clubs for one distance, and a distance without a club', () => {
    const clubs = bag(10)
    const nine = clubs.find(({ name }) => name === '9-iron')?.carryMetres ?? 0
    const gaps = bagGaps(changed(clubs, { '8-iron': nine + 2, 'pitching-wedge': nine - 30 }))
    const verdicts = new Map(gaps.map(({ club, verdict }) => [club.name, verdict]))
    expect(verdicts.get('8-iron')).toBe('overlap')
    expect(verdicts.get('9-iron')).toBe('hole')
  })

  it('goes by the carry, not by the order of the list, and adds up', () => {
    const clubs = [...bag(15)].reverse()
    const gaps = bagGaps(clubs)
    const carries = gaps.map(({ club }) => club.carryMetres)
    expect(carries).toEqual([...carries].sort((a, b) => b - a))
    const sum = gaps.reduce((total, { gapMetres }) => total + gapMetres, 0)
    expect(sum).toBeCloseTo((carries[0] ?? 0) - (carries.at(-1) ?? 0), 9)
  })
})
