import { describe, expect, it } from 'vitest'
import { Failure } from '#faults/failure.ts'
import { completePlayer } from './complete-player.ts'
import { encodePlayer } from './encode-player.ts'
import { mirrorPlayer } from './mirror-player.ts'
import { parsePlayer } from './parse-player.ts'

const LEAST = { schema: 'player/1', name: 'Ida', hand: 'right', handicapIndex: 17.6 }

function refusal(change: unknown): Failure {
  const text = typeof change === 'string' ? change : JSON.stringify({ ...LEAST, ...(change as object) })
  try {
    parsePlayer(text, 'ida.player.json')
  } catch (error) {
    if (error instanceof Failure) return error
    throw error
  }
  throw new Error(`not refused: ${text}`)
}

describe('parsePlayer', () => {
  it('reads of a minor’s name the first only', () => {
    const named = (age: number | undefined): string =>
      parsePlayer(
        JSON.stringify({ schema: 'player/1', name: ' Wren Loam ', age, hand: 'left', handicapIndex: 30 }),
        'x',
      ).name
    expect(named(17)).toBe('Wren')
    expect(named(18)).toBe('Wren Loam')
    expect(named(undefined)).toBe('Wren Loam')
  })

  it('takes a usual score for a level, and refuses a said number that cannot be', () => {
    const said = (numbers: object): string =>
      JSON.stringify({ schema: 'player/1', name: 'x', hand: 'left', said: numbers })
    expect(parsePlayer(said({ usual_score: 93, shape: 'fade' }), 'x').said).toEqual({
      usual_score: 93,
      shape: 'fade',
    })
    expect(() => parsePlayer(said({ shape: 'fade' }), 'x')).toThrow(
      expect.objectContaining({ code: 'MAR-PLAYER-003' }),
    )
    expect(() => parsePlayer(said({ usual_score: 93, shape: 'bent' }), 'x')).toThrow(
      expect.objectContaining({ code: 'MAR-PLAYER-005', where: 'x: said.shape' }),
    )
    expect(() => parsePlayer(said({ usual_score: 20 }), 'x')).toThrow(
      expect.objectContaining({ code: 'MAR-PLAYER-013', where: 'x: said.usual_score' }),
    )
    expect(() => parsePlayer(said({ usual_scores: 93 }), 'x')).toThrow(/Did you mean usual_score/)
  })

  it('reads the least a player file may hold', () => {
    expect(parsePlayer(JSON.stringify(LEAST), 'a')).toEqual({
      name: 'Ida',
      hand: 'right',
      handicapIndex: 17.6,
      sex: 'unstated',
      clubs: [],
      shortGame: {},
      putting: {},
    })
  })

  it('takes one carry in place of a handicap index, and forgives a byte order mark', () => {
    const { handicapIndex: _, ...rest } = LEAST
    const text = `\uFEFF${JSON.stringify({ ...rest, clubs: [{ name: '7-iron', carry_m: 120 }] })}`
    expect(parsePlayer(text, 'a').clubs).toEqual([{ name: '7-iron', carry_m: 120, shots: 0, lies: {} }])
  })

  it('leaves out every number marked as a guess, so that it is filled anew', () => {
    const text = JSON.stringify({
      ...LEAST,
      guesses: ['handicapIndex'],
      clubs: [
        { name: '5-wood', carry_m: 162.8, total_m: 179.2, guesses: ['total_m'] },
        { name: '7-iron', carry_m: 130, shots: 0, guess: true },
      ],
      putting: { direction_sd_deg: 1.5, distance_sd_share: 0.085, guess: true },
    })
    const file = parsePlayer(text, 'a')
    expect(file.handicapIndex).toBeUndefined()
    expect(file.clubs[0]).toEqual({ name: '5-wood', carry_m: 162.8, shots: 0, lies: {} })
    expect(file.clubs[1]).toEqual({ name: '7-iron', shots: 0, lies: {} })
    expect(file.putting).toEqual({})
  })

  const club = (fields: object): object => ({ clubs: [{ name: '7-iron', ...fields }] })
  it.each<[string, unknown, string, string, string]>([
    ['text that is not JSON', '{"schema"', 'MAR-PLAYER-001', 'not JSON', 'ida.player.json'],
    ['an empty file', '', 'MAR-PLAYER-001', 'not JSON', 'ida.player.json'],
    ['a list', '[]', 'MAR-PLAYER-005', 'object in braces', 'ida.player.json'],
    ['another schema', { schema: 'player/9' }, 'MAR-PLAYER-002', 'player/1', 'schema'],
    ['no hand', { hand: undefined }, 'MAR-PLAYER-003', 'hand is missing', 'hand'],
    ['an unknown hand', { hand: 'both' }, 'MAR-PLAYER-005', '"right", "left"', 'hand'],
    ['a blank name', { name: '  ' }, 'MAR-PLAYER-005', 'not empty', 'name'],
    [
      'neither handicap nor carry',
      { handicapIndex: undefined },
      'MAR-PLAYER-003',
      'carry_m',
      'ida.player.json',
    ],
    [
      'a misspelt field',
      { handicapIndx: 3, handicapIndex: undefined },
      'MAR-PLAYER-004',
      'Did you mean handicapIndex?',
      'handicapIndx',
    ],
    [
      'a misspelt field of a club',
      club({ cary_m: 3 }),
      'MAR-PLAYER-004',
      'Did you mean carry_m?',
      'clubs[0].cary_m',
    ],
    [
      'text for a number',
      club({ carry_m: '130' }),
      'MAR-PLAYER-005',
      'clubs[0].carry_m must be a number',
      'clubs[0].carry_m',
    ],
    [
      'an unknown club',
      { clubs: [{ name: '7-irn' }] },
      'MAR-PLAYER-006',
      'Did you mean 7-iron?',
      'clubs[0].name',
    ],
    [
      'a club in everyday writing',
      { clubs: [{ name: '5w' }] },
      'MAR-PLAYER-006',
      'Did you mean 5-wood?',
      'clubs[0].name',
    ],
    [
      'a club twice',
      { clubs: [{ name: '7-iron' }, { name: '7-iron' }] },
      'MAR-PLAYER-007',
      'twice',
      'clubs[1].name',
    ],
    [
      '14 clubs and a putter',
      { clubs: Array.from({ length: 14 }, (_, i) => ({ name: `${46 + i}-wedge` })) },
      'MAR-PLAYER-008',
      'Rule 4.1b',
      'clubs',
    ],
    [
      'the putter among the clubs',
      { clubs: [{ name: 'putter' }] },
      'MAR-PLAYER-009',
      'putting',
      'clubs[0].name',
    ],
    ['a negative carry', club({ carry_m: -130 }), 'MAR-PLAYER-010', 'not -130', 'clubs[0].carry_m'],
    ['a carry of nothing', club({ carry_m: 0 }), 'MAR-PLAYER-010', 'more than 0', 'clubs[0].carry_m'],
    ['a carry of 430 m', club({ carry_m: 430 }), 'MAR-PLAYER-011', 'metres', 'clubs[0].carry_m'],
    [
      'a total under the carry',
      club({ carry_m: 130, total_m: 120 }),
      'MAR-PLAYER-012',
      'shorter',
      'clubs[0].total_m',
    ],
    [
      'a share of mishits over 0.9',
      club({ mishit_share: 1.2 }),
      'MAR-PLAYER-013',
      '0.9',
      'clubs[0].mishit_share',
    ],
    ['an age of 2', { age: 2 }, 'MAR-PLAYER-013', 'age must be from 3 to 110, not 2', 'age'],
    ['a handicap index of 80', { handicapIndex: 80 }, 'MAR-PLAYER-013', '54', 'handicapIndex'],
    [
      'an unknown lie',
      club({ lies: { heavyy: false } }),
      'MAR-PLAYER-014',
      'Did you mean heavy?',
      'clubs[0].lies',
    ],
    [
      'a factor of a lie that is a slip',
      club({ lies: { rough: { carry: 90 } } }),
      'MAR-PLAYER-013',
      '1.2',
      'clubs[0].lies.rough.carry',
    ],
    [
      'a factor of a lie that is not known',
      club({ lies: { rough: { cary: 0.9 } } }),
      'MAR-PLAYER-004',
      'Did you mean carry?',
      'clubs[0].lies.rough.cary',
    ],
    [
      'a factor of a lie that is text',
      club({ lies: { rough: { carry: 'less' } } }),
      'MAR-PLAYER-005',
      'a number',
      'clubs[0].lies.rough.carry',
    ],
    [
      'a lie that is neither yes nor no nor factors',
      club({ lies: { rough: 0.9 } }),
      'MAR-PLAYER-005',
      'true or false',
      'clubs[0].lies.rough',
    ],
  ])('refuses %s', (_, change, code, words, place) => {
    const failure = refusal(change)
    expect(failure.code).toBe(code)
    expect(failure.message).toContain(words)
    expect(failure.where).toContain(place)
  })

  it('keeps sentences written for cards, and refuses what is more than a line of one or stands there twice', () => {
    const sentence = {
      course: 'Links',
      hole: '7',
      reader: 'player',
      part: 'never',
      words: 'Never left.',
      under: '',
      units: 'yards',
    } as const
    const file = { ...LEAST, sentences: [sentence, { ...sentence, part: 'stroke', club: '7-iron' }] }
    const kept = parsePlayer(JSON.stringify(file), 'x')
    expect(kept.sentences).toEqual(file.sentences)
    const again = parsePlayer(encodePlayer(mirrorPlayer(completePlayer(kept))), 'x')
    expect(again.sentences).toEqual(file.sentences)
    for (const [wrong, code, place] of [
      [{ words: 'x'.repeat(241) }, 'MAR-PLAYER-016', 'sentences[0].words'],
      [{ words: 'two\nlines' }, 'MAR-PLAYER-016', 'sentences[0].words'],
      [{ club: 'x'.repeat(41) }, 'MAR-PLAYER-016', 'sentences[0].club'],
      [{ part: 'middle' }, 'MAR-PLAYER-005', 'sentences[0].part'],
      [{ wrods: '' }, 'MAR-PLAYER-004', 'sentences[0].wrods'],
    ] as const)
      expect(refusal({ sentences: [{ ...sentence, ...wrong }] })).toMatchObject({
        code,
        where: expect.stringContaining(place),
      })
    expect(refusal({ sentences: [sentence, sentence] })).toMatchObject({ code: 'MAR-PLAYER-016' })
  })

  it('says how many more faults there are', () => {
    expect(refusal({ clubs: [{ name: 'x', carry_m: -1 }] }).message).toContain('1 more fault')
  })
})
