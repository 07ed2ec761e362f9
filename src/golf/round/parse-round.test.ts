import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { parseRound } from './parse-round.ts'
import { scoreOf } from './round.ts'

const round = (holes: readonly unknown[]): string =>
  JSON.stringify({ schema: 'round/1', date: '2026-05-02', holes })

describe('a round file', () => {
  it('reads strokes with places, letters, penalties and counted putts', () => {
    const { round: read, faults } = parseRound(
      round([
        {
          ref: '7',
          strokes: [
            {
              club: '5-wood',
              aim_offset_m: 0,
              from: 'tee',
              to: { x_m: 14.6, y_m: 171.9 },
              lie: 'first-cut',
              penalty: 0,
              asPlanned: true,
            },
            { club: '7i', to: { letter: 'p', left_m: 60 } },
            { to: { letter: 'g', left_m: 3.7 } },
          ],
          putts: 1,
          firstPutt_m: 3.7,
        },
      ]),
      'file',
    )
    expect(faults).toEqual([])
    expect(read.holes[0]).toMatchObject({
      ref: '7',
      putts: 1,
      firstPuttMetres: 3.7,
      strokes: [
        {
          club: '5-wood',
          aimOffsetMetres: 0,
          from: 'tee',
          finish: { x: 14.6, y: 171.9 },
          lie: 'first-cut',
          penalty: 0,
          isAsPlanned: true,
        },
        { club: '7-iron', finish: { letter: 'p', leftMetres: 60 }, penalty: null },
        { club: null, finish: { letter: 'g', leftMetres: 3.7 } },
      ],
    })
    expect(scoreOf(read.holes[0] as NonNullable<(typeof read.holes)[0]>)).toBe(5)
  })

  it('tells every fault with its field and keeps the rest', () => {
    const { round: read, faults } = parseRound(
      round([
        { ref: 7, strokes: [{ club: 'spade', to: { x_m: 'far', y_m: 2 }, lie: 'moss' }, 3, { clubs: '7i' }] },
        { ref: '7', strokes: [] },
        { strokes: [] },
      ]),
      'file',
    )
    expect(faults.map(({ code, place }) => `${code} ${place}`)).toEqual([
      'MAR-ROUND-004 holes[0].strokes[1]',
      'MAR-ROUND-010 holes[0].strokes[0].club',
      'MAR-ROUND-004 holes[0].strokes[0].to.x_m',
      'MAR-ROUND-004 holes[0].strokes[0].to.x_m',
      'MAR-ROUND-004 holes[0].strokes[0].lie',
      'MAR-ROUND-003 holes[0].strokes[2].clubs',
      'MAR-ROUND-005 holes[1]',
      'MAR-ROUND-004 holes[2].ref',
    ])
    expect(read.holes).toHaveLength(1)
    expect(read.holes[0]?.strokes).toHaveLength(3)
  })

  it.each([
    ['{', 'MAR-ROUND-001'],
    ['[]', 'MAR-ROUND-001'],
    ['{"schema":"round/2"}', 'MAR-ROUND-002'],
    ['{"schema":"round/1","holes":[]}', 'MAR-ROUND-008'],
  ])('refuses %s', (text, code) => {
    const caught = ((): unknown => {
      try {
        return parseRound(text, 'file')
      } catch (error) {
        return error
      }
    })()
    expect(caught).toBeInstanceOf(Failure)
    expect((caught as Failure).code).toBe(code)
  })
})
