import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { encodeRound } from '#golf/round/encode-round.ts'
import { EMPTY_LOG } from '#golf/round/round-log.ts'
import { checkRound } from './check-round.ts'

describe('a round before it is kept', () => {
  it('is named by its date, player and course, typed or tapped, begun or not', () => {
    const typed = readFileSync('examples/tobin-skell.round.json', 'utf8')
    expect(checkRound(typed, 'rounds/x')).toEqual({
      name: '2026-07-23, Tobin Skell, Sandrel Ness',
      faults: [],
    })
    const facts = {
      id: 'r-1',
      date: '2026-05-02',
      tee: null,
      format: null,
      course: 'Sandrel Ness',
      courseId: null,
      player: null,
      playerId: null,
      purpose: 'counting',
      hasDevices: true,
      isTextOnly: false,
      clubs: [],
      card: [],
      planNumbers: null,
    } as const
    const tapped = encodeRound({ facts, log: EMPTY_LOG })
    expect(checkRound(tapped, 'rounds/x')).toEqual({ name: '2026-05-02, Sandrel Ness', faults: [] })
  })

  it('is kept with its faults, and refused when it is no round', () => {
    const text = '{"schema":"round/1","holes":[{"ref":"1","strokes":[{"club":"spade"}]}]}'
    expect(checkRound(text, 'rounds/x').faults).toMatchObject([
      { code: 'MAR-ROUND-010', severity: 'warning' },
    ])
    expect(() => checkRound('{"schema":"round/1","holes":[]}', 'rounds/x')).toThrow('no hole')
  })
})
