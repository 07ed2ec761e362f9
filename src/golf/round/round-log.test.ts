import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { encodeRound } from './encode-round.ts'
import type { KeptRound, RoundFacts } from './kept-round.ts'
import { isSameRound, mergeRounds } from './kept-round.ts'
import {
  addStroke,
  changeStroke,
  insertStroke,
  playAfter,
  removeStroke,
  say,
  wordsBefore,
} from './log-steps.ts'
import { parseKeptRound } from './parse-kept-round.ts'
import { parseRound } from './parse-round.ts'
import { scoreOf } from './round.ts'
import { EMPTY_LOG, isSameLog, mergeLogs, type RoundLog, withWords } from './round-log.ts'
import { holeOfLog, holesOfLog, strokesOn } from './round-of-log.ts'

const FACTS: RoundFacts = {
  id: 'round-1',
  date: '2026-05-02',
  tee: 'drift',
  format: 'strokes',
  course: 'Sandrel Ness',
  courseId: 'sandrel-ness',
  player: 'Wren',
  playerId: 'wren',
  purpose: 'counting',
  hasDevices: true,
  isTextOnly: false,
  clubs: ['driver', '7-iron', 'putter'],
  card: [{ ref: '7', par: 4, facts: ['365 yd'], club: '5-wood', words: 'Start it right.', numbers: '' }],
  planNumbers: null,
}
const tapped = { finish: { x: 1.5, y: 180.25 }, penalty: null, isAsPlanned: false } as const
const step = (log: RoundLog, by: string, what: ReturnType<typeof addStroke>): RoundLog =>
  withWords(log, by, what(log, by))
const clubs = (log: RoundLog, hole = '7'): (string | null)[] =>
  holeOfLog(log, hole).strokes.map(({ stroke }) => stroke.club)

/** Any log that two phones could have come to, some of it known to both. */
const logs = fc
  .array(
    fc.record({
      by: fc.constantFrom('a', 'b', 'c'),
      hole: fc.constantFrom('1', '2'),
      what: fc.constantFrom('add', 'change', 'remove', 'putts', 'skip', 'close', 'insert'),
      club: fc.constantFrom('driver', '7-iron', null),
      nth: fc.nat(4),
      copyFrom: fc.constantFrom('a', 'b', 'c', null),
    }),
    { maxLength: 30 },
  )
  .map((acts) => {
    const phones: Record<string, RoundLog> = { a: EMPTY_LOG, b: EMPTY_LOG, c: EMPTY_LOG }
    for (const { by, hole, what, club, nth, copyFrom } of acts) {
      let log = phones[by] as RoundLog
      if (copyFrom !== null) log = mergeLogs(log, phones[copyFrom] as RoundLog)
      const id = strokesOn(log, hole)[nth]?.id ?? 'none'
      const steps = {
        add: addStroke(hole, { ...tapped, club }),
        change: changeStroke(id, { club }),
        remove: removeStroke(id),
        putts: say({ kind: 'putts', hole, putts: nth }),
        skip: say({ kind: 'skipped', hole, isSo: nth > 1 }),
        close: say({ kind: 'closed' }),
        insert: insertStroke(id, { ...tapped, club }),
      }
      phones[by] = step(log, by, steps[what])
    }
    return phones
  })

describe('a round that is written down', () => {
  it('is the same in whatever order and however often its copies are laid together', () => {
    fc.assert(
      fc.property(logs, ({ a, b, c }) => {
        const [one, two, three] = [a, b, c] as [RoundLog, RoundLog, RoundLog]
        const all = mergeLogs(mergeLogs(one, two), three)
        expect(isSameLog(all, mergeLogs(three, mergeLogs(two, one)))).toBe(true)
        expect(isSameLog(all, mergeLogs(all, one))).toBe(true)
        expect(isSameLog(mergeLogs(one, one), one)).toBe(true)
        expect(holesOfLog(all, ['1', '2'])).toEqual(
          holesOfLog(mergeLogs(mergeLogs(three, one), two), ['1', '2']),
        )
      }),
    )
  })

  it('comes back from its file as it was, read by the recap too', () => {
    fc.assert(
      fc.property(logs, ({ a, b }) => {
        const round: KeptRound = { facts: FACTS, log: mergeLogs(a as RoundLog, b as RoundLog) }
        const text = encodeRound(round)
        const read = parseKeptRound(text, 'file')
        expect(read?.faults).toEqual([])
        expect(read !== null && isSameRound(read.round, round)).toBe(true)
        const holes = holesOfLog(round.log, ['7'])
        if (holes.length === 0) expect(() => parseRound(text, 'file')).toThrow('no hole')
        else {
          const { round: played, faults } = parseRound(text, 'file')
          expect(faults).toEqual([])
          expect(played.holes.map(scoreOf)).toEqual(holes.map(scoreOf))
        }
      }),
    )
  })

  it('puts a forgotten stroke in its place and takes any step back', () => {
    let log = EMPTY_LOG
    for (const club of ['driver', '7-iron']) log = step(log, 'a', addStroke('7', { ...tapped, club }))
    const [, second] = strokesOn(log, '7')
    const words = insertStroke(second?.id ?? '', { ...tapped, club: '5-wood' })(log, 'a')
    const later = withWords(log, 'a', words)
    expect(clubs(later)).toEqual(['driver', '5-wood', '7-iron'])
    const back = withWords(later, 'a', wordsBefore(log, words))
    expect(clubs(back)).toEqual(['driver', '7-iron'])
    const gone = removeStroke(second?.id ?? '')(back, 'a')
    expect(clubs(withWords(back, 'a', gone))).toEqual(['driver'])
    expect(clubs(withWords(withWords(back, 'a', gone), 'a', wordsBefore(back, gone)))).toEqual([
      'driver',
      '7-iron',
    ])
  })

  it('counts once what two phones wrote down under one number, and loses neither', () => {
    const first = step(EMPTY_LOG, 'a', addStroke('7', { ...tapped, club: 'driver' }))
    const here = step(first, 'a', addStroke('7', { ...tapped, club: '7-iron' }))
    const there = step(first, 'b', addStroke('7', { ...tapped, club: '5-wood' }))
    const both = mergeLogs(here, there)
    expect(clubs(both)).toEqual(['driver', '5-wood'])
    const { setAside } = holeOfLog(both, '7')
    expect(setAside.map(({ stroke }) => stroke.club)).toEqual(['7-iron'])
    const played = step(both, 'a', playAfter(setAside.map(({ id }) => id)))
    expect(clubs(played)).toEqual(['driver', '5-wood', '7-iron'])
    expect(holeOfLog(played, '7').setAside).toEqual([])
  })

  it('takes what was settled before the start from one copy, whichever comes first', () => {
    const one = { facts: FACTS, log: EMPTY_LOG }
    const other = { facts: { ...FACTS, date: '2026-05-03' }, log: EMPTY_LOG }
    expect(mergeRounds(one, other).facts).toEqual(mergeRounds(other, one).facts)
  })

  it('tells what is wrong in a log, keeps the rest, and leaves a file without a log alone', () => {
    const file = {
      ...(JSON.parse(encodeRound({ facts: FACTS, log: EMPTY_LOG })) as object),
      log: [
        { hole: '7', putts: 2, count: 1, by: 'a' },
        { hole: '7', putts: 'two', count: 2, by: 'a' },
        { hole: '8', count: 3, by: 'a' },
        { hole: '8', putts: 1, by: 'a' },
      ],
    }
    const read = parseKeptRound(JSON.stringify(file), 'file')
    expect(read?.faults.map(({ code, place }) => `${code} ${place}`)).toEqual([
      'MAR-ROUND-004 log[1].putts',
      'MAR-ROUND-004 log[2].hole',
      'MAR-ROUND-004 log[3].count',
    ])
    expect(parseKeptRound('{"schema":"round/1","id":"x","holes":[]}', 'file')).toBeNull()
  })
})
